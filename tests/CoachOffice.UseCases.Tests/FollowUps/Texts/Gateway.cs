using System.Net;
using System.Net.Sockets;

namespace CoachOffice.UseCases.Tests.FollowUps.Texts;

/// <summary>A gateway for text messages on this machine.</summary>
internal sealed class Gateway : IDisposable
{
    private readonly HttpListener _listener = new();
    private readonly Task _running;

    public Gateway()
    {
        using (var free = new TcpListener(IPAddress.Loopback, 0))
        {
            free.Start();
            Url = $"http://127.0.0.1:{((IPEndPoint)free.LocalEndpoint).Port}/texts/";
        }

        _listener.Prefixes.Add(Url);
        _listener.Start();
        _running = Task.Run(Answer);
    }

    public string Url { get; }

    /// <summary>What is answered.</summary>
    public int Status { get; set; } = 202;

    public List<(string Body, string? Key, string? Signature)> Posted { get; } = [];

    public void Dispose()
    {
        _listener.Close();
        _running.Wait(TimeSpan.FromSeconds(5));
    }

    private async Task Answer()
    {
        while (_listener.IsListening)
        {
            try
            {
                var context = await _listener.GetContextAsync();
                using var reader = new StreamReader(context.Request.InputStream);
                Posted.Add((await reader.ReadToEndAsync(), context.Request.Headers["Idempotency-Key"], context.Request.Headers["X-CoachOffice-Signature"]));
                context.Response.StatusCode = Status;
                context.Response.Close();
            }
            catch (Exception end) when (end is HttpListenerException or ObjectDisposedException)
            {
                return;
            }
        }
    }
}
