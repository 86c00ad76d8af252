using System.Collections.Concurrent;
using System.Diagnostics;
using System.Net;

namespace CoachOffice.Web.Tests.Nodes;

/// <summary>The built program as a process of its own on a free port, as it runs on a machine.</summary>
internal sealed class Node : IAsyncDisposable
{
    private const string Listening = "Now listening on: ";
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly TaskCompletionSource<Uri> _address = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly ConcurrentQueue<string> _lines = new();
    private readonly Process _process;

    private Node(ProcessStartInfo start)
    {
        _process = new Process { StartInfo = start, EnableRaisingEvents = true };
        _process.OutputDataReceived += (_, line) => Read(line.Data);
        _process.ErrorDataReceived += (_, line) => Read(line.Data);
        _process.Exited += (_, _) => _address.TrySetException(new InvalidOperationException($"The node ended: {Log}"));
        _process.Start();
        _process.BeginOutputReadLine();
        _process.BeginErrorReadLine();
    }

    /// <summary>All it wrote.</summary>
    public string Log => string.Join('\n', _lines);

    public bool HasExited => _process.HasExited;

    /// <summary>A node on PostgreSQL.</summary>
    public static Node On(NodeDatabase database) => Start(database.Folder.FullName, ("COACHOFFICE_Database__Provider", "postgresql"), ("COACHOFFICE_Database__ConnectionString", database.ConnectionString));

    /// <summary>A node on a file in its folder.</summary>
    public static Node In(string folder) => Start(folder);

    /// <summary>Its address once it listens.</summary>
    public Task<Uri> Address() => _address.Task.WaitAsync(Patience, TestContext.Current.CancellationToken);

    /// <summary>Waits until it may be sent visitors.</summary>
    public async Task<Uri> Ready()
    {
        var address = await Address();
        using var client = new HttpClient { BaseAddress = address };
        var began = Stopwatch.GetTimestamp();
        while (true)
        {
            using var answer = await client.GetAsync(new Uri("/health/ready", UriKind.Relative), TestContext.Current.CancellationToken);
            if (answer.StatusCode == HttpStatusCode.OK) return address;
            if (Stopwatch.GetElapsedTime(began) > Patience) throw new TimeoutException(Log);
            await Task.Delay(50, TestContext.Current.CancellationToken);
        }
    }

    /// <summary>SIGKILL: nothing of it has a chance to tidy up.</summary>
    public async Task Kill()
    {
        _process.Kill();
        await _process.WaitForExitAsync(TestContext.Current.CancellationToken);
    }

    public async ValueTask DisposeAsync()
    {
        if (!_process.HasExited) _process.Kill();
        await _process.WaitForExitAsync();
        _process.Dispose();
    }

    private static Node Start(string folder, params (string Name, string Value)[] settings)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "CoachOffice.Web.dll");
        var start = new ProcessStartInfo("dotnet", [program, "--urls", "http://127.0.0.1:0"]) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false, WorkingDirectory = AppContext.BaseDirectory };
        start.Environment["COACHOFFICE_DATA"] = folder;
        start.Environment["COACHOFFICE_RateLimits__SignIn"] = "10000";
        start.Environment["COACHOFFICE_Backup__Enabled"] = "false";
        foreach (var (name, value) in settings) start.Environment[name] = value;
        return new Node(start);
    }

    private void Read(string? line)
    {
        if (line is null) return;
        _lines.Enqueue(line);
        if (line.IndexOf(Listening, StringComparison.Ordinal) is >= 0 and var at) _address.TrySetResult(new Uri(line[(at + Listening.Length)..].Trim()));
    }
}
