using System.Net;
using System.Net.Sockets;

namespace CoachOffice.Benchmarks.Programs;

/// <summary>Addresses on this machine.</summary>
internal static class Loopback
{
    /// <summary>An address nobody listens on at the moment.</summary>
    public static Uri Free()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return new Uri($"http://127.0.0.1:{((IPEndPoint)listener.LocalEndpoint).Port}");
    }
}
