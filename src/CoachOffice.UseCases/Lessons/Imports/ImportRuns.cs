using System.Collections.Concurrent;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>The imports of this node, in memory only: a restart forgets them, and with them nothing but what their one transaction had not kept yet.</summary>
public sealed class ImportRuns(IServiceScopeFactory scopes, ILogger<ImportRuns> log) : IDisposable
{
    private readonly ConcurrentDictionary<Guid, ImportRun> _runs = new();

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (var run in _runs.Values) run.Stop();
    }

    /// <summary>Begins one in the background; false while one of the same file or account is under way.</summary>
    internal bool Begin(ImportOrder order)
    {
        if (_runs.Values.Any(r => r.IsRunning && r.Account == order.Actor.Account)) return false;
        var run = new ImportRun(order, scopes, log);
        foreach (var (id, old) in _runs) if (!old.IsRunning && old.Account == order.Actor.Account) _runs.TryRemove(id, out _);
        if (!_runs.TryAdd(order.File, run)) return false;
        _ = Task.Run(run.Run);
        return true;
    }

    /// <summary>The file's, or null.</summary>
    internal ImportRun? Of(Guid file) => _runs.GetValueOrDefault(file);
}
