using System.Net.Sockets;
using MailKit;
using MailKit.Net.Smtp;
using MailKit.Security;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>The connection to the mail server, kept from one message to the next.</summary>
/// <remarks>
/// Two things cost 44 ms a message each and are switched off: without NoDelay the second half of a message waits for the acknowledgement of its first, and when two commands
/// are sent in one go (pipelining) many servers answer in two packets, the second of which waits for our acknowledgement, which is delayed likewise.
/// </remarks>
internal sealed class SmtpLine(MailSettings settings) : IDisposable
{
    private SmtpClient? _client;

    /// <summary>True while a connection of an earlier message is still there; whether the server still wants it shows when it is used.</summary>
    public bool IsOpen => _client is { IsConnected: true };

    /// <summary>The open connection, or a new one.</summary>
    public async Task<SmtpClient> Open(CancellationToken stop)
    {
        if (_client is { IsConnected: true } open) return open;
        Drop();
        var client = _client = new SmtpClient { Timeout = settings.TimeoutSeconds * 1000 };
        var security = settings.AllowPlain ? SecureSocketOptions.StartTlsWhenAvailable : settings.Port == 465 ? SecureSocketOptions.SslOnConnect : SecureSocketOptions.StartTls;
        var socket = new Socket(SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
        try
        {
            await socket.ConnectAsync(settings.Host, settings.Port, stop);
            await client.ConnectAsync(socket, settings.Host, settings.Port, security, stop);
        }
        catch
        {
            socket.Dispose();
            throw;
        }

        if (settings.User.Length > 0) await client.AuthenticateAsync(settings.User, settings.Password, stop);
        client.Capabilities &= ~SmtpCapabilities.Pipelining;
        return client;
    }

    /// <summary>Says good-bye; a server that falters over it changes nothing about what it took.</summary>
    public async Task Close(CancellationToken stop)
    {
        try
        {
            if (_client is { IsConnected: true } client) await client.DisconnectAsync(quit: true, stop);
        }
        catch (Exception falter) when (falter is IOException or SocketException or ProtocolException or CommandException or OperationCanceledException)
        {
            // It is dropped anyway.
        }
        finally
        {
            Drop();
        }
    }

    /// <summary>Lets it go without a word, as after anything that left it in a state nobody knows.</summary>
    public void Drop()
    {
        _client?.Dispose();
        _client = null;
    }

    public void Dispose() => Drop();
}
