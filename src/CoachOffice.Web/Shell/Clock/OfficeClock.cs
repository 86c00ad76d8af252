using CoachOffice.UseCases.FollowUps;
using Hangfire;

namespace CoachOffice.Web.Shell.Clock;

/// <summary>The job Hangfire runs: one sweep of what is due. Everything else about time lives in our own tables.</summary>
internal sealed class OfficeClock(IServiceScopeFactory scopes)
{
    private static readonly SemaphoreSlim OneAtATime = new(1, 1);

    /// <summary>Sweeps unless a sweep of this process is still under way; the next minute comes anyway.</summary>
    [AutomaticRetry(Attempts = 0)]
    public async Task Sweep(CancellationToken stop)
    {
        if (!await OneAtATime.WaitAsync(TimeSpan.Zero, stop)) return;
        try
        {
            await using var scope = scopes.CreateAsyncScope();
            await scope.ServiceProvider.GetRequiredService<SweepMessages>().Once(stop);
        }
        finally
        {
            OneAtATime.Release();
        }
    }
}
