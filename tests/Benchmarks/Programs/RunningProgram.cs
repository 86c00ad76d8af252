using System.Diagnostics;
using System.Globalization;
using System.Net;
using CoachOffice.Benchmarks.Measuring;

namespace CoachOffice.Benchmarks.Programs;

/// <summary>A program as a process of its own on a loopback address.</summary>
internal sealed class RunningProgram : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(2);

    private readonly Process _process;
    private readonly long _started = Stopwatch.GetTimestamp();

    private RunningProgram(string assembly, string[] args, string? dataFolder)
    {
        Address = Loopback.Free();
        var start = new ProcessStartInfo("dotnet", [assembly, .. args, "--urls", Address.ToString()])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Path.GetDirectoryName(assembly),
        };
        if (dataFolder is not null) start.Environment["COACHOFFICE_DATA"] = dataFolder;
        _process = Process.Start(start)!;
        _process.OutputDataReceived += Ignore;
        _process.ErrorDataReceived += Ignore;
        _process.BeginOutputReadLine();
        _process.BeginErrorReadLine();
    }

    public Uri Address { get; }

    public static RunningProgram Bare() => new(typeof(RunningProgram).Assembly.Location, [BareProgram.Word], null);

    /// <summary>The office as it is built beside this benchmark.</summary>
    public static RunningProgram Office(string dataFolder) =>
        new(Path.Combine(Checkout.Root, "src", "CoachOffice.Web", "bin", Build, "net10.0", "CoachOffice.Web.dll"), [], dataFolder);

    /// <summary>Asks again and again until the path answers 200; milliseconds since the process was started.</summary>
    public async Task<double> FirstPage(HttpClient client, string path)
    {
        while (Stopwatch.GetElapsedTime(_started) < Patience && !_process.HasExited)
        {
            if (await Status(client, new Uri(Address, path)) == HttpStatusCode.OK) return Stopwatch.GetElapsedTime(_started).TotalMilliseconds;
            await Task.Delay(Pause);
        }

        throw new InvalidOperationException($"{path} did not answer 200.");
    }

    /// <summary>Resident memory in MB, as the kernel counts it.</summary>
    public double ResidentMegabytes()
    {
        var line = File.ReadLines($"/proc/{_process.Id}/status").First(l => l.StartsWith("VmRSS:", StringComparison.Ordinal));
        return double.Parse(line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)[1], CultureInfo.InvariantCulture) / 1024;
    }

    public void Dispose()
    {
        if (!_process.HasExited) _process.Kill(entireProcessTree: true);
        _process.WaitForExit();
        _process.Dispose();
    }

#if DEBUG
    private static string Build => "Debug";
#else
    private static string Build => "Release";
#endif

    private static void Ignore(object sender, DataReceivedEventArgs line)
    {
        // Read so that the process never waits for a full pipe.
    }

    private static async Task<HttpStatusCode?> Status(HttpClient client, Uri page)
    {
        try
        {
            using var answer = await client.GetAsync(page);
            return answer.StatusCode;
        }
        catch (HttpRequestException)
        {
            return null;
        }
    }
}
