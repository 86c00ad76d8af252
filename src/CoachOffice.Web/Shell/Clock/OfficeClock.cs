using CoachOffice.UseCases.Bookings.Waiting;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.FollowUps.ByTime;
using CoachOffice.UseCases.Ledger.Packages;
using CoachOffice.UseCases.Lessons.Imports;
using CoachOffice.UseCases.Media;
using CoachOffice.UseCases.Safekeeping;
using CoachOffice.UseCases.Students.Imports;
using CoachOffice.UseCases.Students.Merging;
using Hangfire;

namespace CoachOffice.Web.Shell.Clock;

/// <summary>The jobs Hangfire runs: a sweep of what is due, and one of what a crash left. Everything else about time lives in our own tables.</summary>
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
            await scope.ServiceProvider.GetRequiredService<LapseHolds>().Due(stop);
            await scope.ServiceProvider.GetRequiredService<SweepDeviceFiles>().Once(stop);
            await scope.ServiceProvider.GetRequiredService<SweepStudentFiles>().Once(stop);
            await scope.ServiceProvider.GetRequiredService<SweepSignposts>().Once(stop);

            // Last, as much mail may take most of the minute.
            await scope.ServiceProvider.GetRequiredService<SweepMessages>().Once(stop);
        }
        finally
        {
            OneAtATime.Release();
        }
    }

    /// <summary>Writes the messages that come from time rather than from a deed.</summary>
    [AutomaticRetry(Attempts = 0)]
    public async Task WriteByTime(CancellationToken stop)
    {
        await using var scope = scopes.CreateAsyncScope();
        await scope.ServiceProvider.GetRequiredService<WriteByTime>().Once(stop);
    }

    /// <summary>Ends packages whose last day is over.</summary>
    [AutomaticRetry(Attempts = 0)]
    public async Task EndPackages(CancellationToken stop)
    {
        await using var scope = scopes.CreateAsyncScope();
        await scope.ServiceProvider.GetRequiredService<EndPackages>().Once(stop);
    }

    /// <summary>Makes a backup when one is due, and tries it out.</summary>
    [AutomaticRetry(Attempts = 0)]
    public async Task Backup(CancellationToken stop)
    {
        await using var scope = scopes.CreateAsyncScope();
        await scope.ServiceProvider.GetRequiredService<MakeBackup>().Due(stop);
    }

    /// <summary>Removes files of stills and clips that no row names.</summary>
    [AutomaticRetry(Attempts = 0)]
    public async Task SweepMedia(CancellationToken stop)
    {
        await using var scope = scopes.CreateAsyncScope();
        await scope.ServiceProvider.GetRequiredService<SweepMedia>().Once(stop);
    }
}
