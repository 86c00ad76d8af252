using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Safekeeping;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace CoachOffice.UseCases.Safekeeping;

/// <summary>Backups a person of this node asked for: they go on when the page that asked is left. A restart stops them; what is half made is no backup.</summary>
public sealed partial class BackupRuns(IServiceScopeFactory scopes, TimeProvider time, ILogger<BackupRuns> log) : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(8);
    private readonly CancellationTokenSource _end = new();
    private readonly Lock _gate = new();
    private Task<Outcome<SafetyCopy>?> _run = Task.FromResult<Outcome<SafetyCopy>?>(null);

    /// <summary>True while one is being made here.</summary>
    public bool IsRunning => !_run.IsCompleted;

    /// <summary>Begins one unless one is under way, and waits a little for its end.</summary>
    /// <returns>What came of it; null when it is still going on.</returns>
    public async Task<Outcome<SafetyCopy>?> Begin(Actor actor)
    {
        Task<Outcome<SafetyCopy>?> run;
        lock (_gate)
        {
            if (!IsRunning) _run = Task.Run(() => Make(actor));
            run = _run;
        }

        await Task.WhenAny(run, Task.Delay(Patience, time));
        return run.IsCompleted ? await run : null;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _end.Cancel();
        _end.Dispose();
    }

    private async Task<Outcome<SafetyCopy>?> Make(Actor actor)
    {
        try
        {
            await using var scope = scopes.CreateAsyncScope();
            return await scope.ServiceProvider.GetRequiredService<MakeBackup>().Now(actor, _end.Token);
        }
        catch (OperationCanceledException)
        {
            return null;
        }
#pragma warning disable CA1031 // Nobody waits for what goes on in the background; the log is where it is told.
        catch (Exception failure)
#pragma warning restore CA1031
        {
            LogFailure(failure);
            return new Refusal("backup-failed", "The backup failed for a reason of the program's own; the log says which. Earlier backups stay.");
        }
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "A backup failed.")]
    private partial void LogFailure(Exception failure);
}
