using System.Buffers;
using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;
using MimeKit;
using SmtpServer;
using SmtpServer.ComponentModel;
using SmtpServer.Mail;
using SmtpServer.Net;
using SmtpServer.Protocol;
using SmtpServer.Storage;

namespace CoachOffice.UseCases.Tests.FollowUps;

/// <summary>A mail server on a loopback port that does what the test says.</summary>
public sealed class MailServer : IAsyncDisposable
{
    private readonly CancellationTokenSource _end = new();
    private readonly Task _running;
    private int _connections;

    public MailServer(int port)
    {
        Port = port;
        var options = new SmtpServerOptionsBuilder().ServerName("localhost").Endpoint(e => e.Endpoint(new IPEndPoint(IPAddress.Loopback, port)).AllowUnsecureAuthentication()).Build();
        var services = new ServiceProvider();
        services.Add(new Store(this));
        services.Add(new Filter(this));
        var server = new SmtpServer.SmtpServer(options, services);
        server.SessionCreated += (_, _) => Interlocked.Increment(ref _connections);
        _running = server.StartAsync(_end.Token);
    }

    public int Port { get; }

    /// <summary>How many connections were opened.</summary>
    public int Connections => Volatile.Read(ref _connections);

    public ConcurrentQueue<MimeMessage> Taken { get; } = new();

    /// <summary>Envelope senders, one a message begun.</summary>
    public ConcurrentQueue<string> Senders { get; } = new();

    /// <summary>True ends the connection before a message, the second time and later, as a server may.</summary>
    public bool EndsConnections { get; set; }

    /// <summary>What is answered to a recipient.</summary>
    public Func<string, SmtpResponse?> OnRecipient { get; set; } = _ => null;

    /// <summary>What is answered after the message; may take its time.</summary>
    public Func<CancellationToken, Task<SmtpResponse>> OnMessage { get; set; } = _ => Task.FromResult(SmtpResponse.Ok);

    /// <summary>A port nobody listens on.</summary>
    public static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    public async ValueTask DisposeAsync()
    {
        await _end.CancelAsync();
        await _running.ContinueWith(_ => { }, TaskScheduler.Default);
        _end.Dispose();
    }

    private sealed class Store(MailServer server) : MessageStore
    {
        public override async Task<SmtpResponse> SaveAsync(ISessionContext context, IMessageTransaction transaction, ReadOnlySequence<byte> buffer, CancellationToken cancellationToken)
        {
            var answer = await server.OnMessage(cancellationToken);
            if (answer.ReplyCode == SmtpReplyCode.Ok) server.Taken.Enqueue(await MimeMessage.LoadAsync(new MemoryStream(buffer.ToArray()), cancellationToken));
            return answer;
        }
    }

    private sealed class Filter(MailServer server) : MailboxFilter
    {
        private readonly ConcurrentDictionary<Guid, bool> _used = [];

        public override Task<bool> CanAcceptFromAsync(ISessionContext context, IMailbox from, int size, CancellationToken cancellationToken)
        {
            if (!_used.TryAdd(context.SessionId, true) && server.EndsConnections) throw new SmtpResponseException(SmtpResponse.ServiceClosingTransmissionChannel, quit: true);
            server.Senders.Enqueue(from.AsAddress());
            return Task.FromResult(true);
        }

        public override Task<bool> CanDeliverToAsync(ISessionContext context, IMailbox to, IMailbox from, CancellationToken cancellationToken) =>
            server.OnRecipient(to.AsAddress()) is { } refusal ? throw new SmtpResponseException(refusal) : Task.FromResult(true);
    }
}
