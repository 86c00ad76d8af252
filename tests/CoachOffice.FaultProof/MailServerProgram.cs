using System.Globalization;
using System.Net;
using System.Net.Sockets;
using SmtpServer;
using SmtpServer.ComponentModel;

namespace CoachOffice.FaultProof;

/// <summary>A mail server as a process of its own. Lines on its standard input: a mode, <c>pause MS</c>, <c>drain</c>; it answers each with a line.</summary>
internal static class MailServerProgram
{
    public static async Task Run(string log, TextReader commands, TextWriter answers)
    {
        var store = new LoggingStore(log);
        var port = FreePort();
        var options = new SmtpServerOptionsBuilder().ServerName("localhost").Endpoint(e => e.Endpoint(new IPEndPoint(IPAddress.Loopback, port))).Build();
        var services = new ServiceProvider();
        services.Add(store);
        using var end = new CancellationTokenSource();
        var running = new SmtpServer.SmtpServer(options, services).StartAsync(end.Token);
        await answers.WriteLineAsync(port.ToString(CultureInfo.InvariantCulture));
        while (await commands.ReadLineAsync() is { } line)
        {
            if (line == "drain") await store.Drained();
            else if (line.StartsWith("pause ", StringComparison.Ordinal)) store.Pause = TimeSpan.FromMilliseconds(double.Parse(line[6..], CultureInfo.InvariantCulture));
            else store.Mode = Enum.Parse<ServerMode>(line);
            await answers.WriteLineAsync(line);
        }

        await end.CancelAsync();
        await running.ContinueWith(static _ => { }, TaskScheduler.Default);
        store.Close();
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
