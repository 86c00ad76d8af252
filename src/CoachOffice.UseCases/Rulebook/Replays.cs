using System.Collections.Concurrent;
using CoachOffice.Domain.Access;
using CoachOffice.Drafting.Replay;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>The comparisons of this node: the last one of each account, in memory only. A restart forgets them, and they are begun again in a minute.</summary>
public sealed class Replays(IServiceScopeFactory scopes, ILogger<Replays> log) : IDisposable
{
    private readonly ConcurrentDictionary<AccountId, ReplayRun> _runs = new();

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (var run in _runs.Values) run.Stop();
    }

    /// <summary>Begins one in the background; the account's one before ends.</summary>
    internal void Begin(AccountId account, LessonReplay replay)
    {
        var run = new ReplayRun(replay, scopes, log);
        _runs.AddOrUpdate(account, run, (_, before) =>
        {
            before.Stop();
            return run;
        });
        _ = Task.Run(run.Run);
    }

    /// <summary>The account's, or null.</summary>
    internal ReplayRun? Of(AccountId account) => _runs.GetValueOrDefault(account);
}
