using System.Collections.Concurrent;
using System.Diagnostics;
using CoachOffice.FaultProof;

namespace CoachOffice.UseCases.Tests.FollowUps.Faults;

/// <summary>A mail server or a node as a process of its own, told things by lines and killed without warning.</summary>
internal sealed class FaultProgram : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly Process _process;
    private readonly ConcurrentQueue<string> _errors = new();

    private FaultProgram(Process process)
    {
        _process = process;
        process.ErrorDataReceived += (_, said) => _errors.Enqueue(said.Data ?? "");
        process.BeginErrorReadLine();
    }

    /// <summary>What it wrote on its error output.</summary>
    public string Errors => string.Join('\n', _errors);

    /// <summary>Starts it; the second value is its first line.</summary>
    public static async Task<(FaultProgram Program, string Said)> Start(string[] args, IReadOnlyDictionary<string, string> environment)
    {
        var start = new ProcessStartInfo("dotnet", [typeof(ManyDue).Assembly.Location, .. args])
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var (name, value) in environment) start.Environment[name] = value;
        var program = new FaultProgram(Process.Start(start)!);
        return (program, await program.Line());
    }

    /// <summary>Says a line and waits for it to be taken in.</summary>
    public async Task Tell(string line)
    {
        await _process.StandardInput.WriteLineAsync(line);
        Assert.Equal(line, await Line());
    }

    /// <summary>SIGKILL: no time for anything.</summary>
    public async Task Kill()
    {
        _process.Kill();
        await _process.WaitForExitAsync();
    }

    public async ValueTask DisposeAsync()
    {
        if (!_process.HasExited) await Kill();
        _process.Dispose();
    }

    private async Task<string> Line() => await _process.StandardOutput.ReadLineAsync().WaitAsync(Patience) ?? throw new InvalidOperationException($"It ended: {Errors}");
}
