using System.Net;
using System.Net.Sockets;

namespace CoachOffice.UseCases.Tests.FollowUps.Texts;

/// <summary>Takes what is posted and hangs up without an answer.</summary>
internal sealed class HangingUp : IDisposable
{
    private readonly TcpListener _listener = new(IPAddress.Loopback, 0);
    private readonly Task _running;

    public HangingUp()
    {
        _listener.Start();
        Url = $"http://127.0.0.1:{((IPEndPoint)_listener.LocalEndpoint).Port}/texts/";
        _running = Task.Run(Take);
    }

    public string Url { get; }

    public void Dispose()
    {
        _listener.Dispose();
        _running.Wait(TimeSpan.FromSeconds(5));
    }

    private async Task Take()
    {
        try
        {
            while (true)
            {
                using var caller = await _listener.AcceptTcpClientAsync();
                _ = await caller.GetStream().ReadAsync(new byte[4096]);
            }
        }
        catch (Exception end) when (end is SocketException or ObjectDisposedException)
        {
            // The test is over.
        }
    }
}
