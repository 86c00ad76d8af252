using CoachOffice.UseCases.Bookings.Waiting;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.FollowUps.Bounces;
using CoachOffice.UseCases.FollowUps.ByTime;
using CoachOffice.UseCases.Ledger.Packages;
using CoachOffice.UseCases.Lessons.Imports;
using CoachOffice.UseCases.Media;
using CoachOffice.UseCases.Safekeeping;
using CoachOffice.UseCases.Students.Imports;
using CoachOffice.UseCases.Students.Merging;
using CoachOffice.UseCases.Watching;
using Hangfire;

namespace CoachOffice.Web.Shell.Clock;

/// <summary>The jobs Hangfire runs: a sweep of what is due, and one of what a crash left. Everything else about time lives in our own tables.</summary>
internal sealed class OfficeClock(IServiceScopeFactory scopes) : IDisposable
{
    private readonly SemaphoreSlim _oneAtATime = new(1, 1);

    public void Dispose() => _oneAtATime.Dispose();

    /// <summary>Sweeps unless a sweep of this process is still under way; the next minute comes anyway.</summary>
    [AutomaticRetry(Attempts = 0)]
    public async Task Sweep(CancellationToken stop)
    {
        if (!await _oneAtATime.WaitAsync(TimeSpan.Zero, stop)) return;
        try
        {
            await Job("sweep", services => SweepAll(services, stop));
        }
        finally
        {
            _oneAtATime.Release();
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
    public Task EndPackages(CancellationToken stop) => Job("end-packages", services => services.GetRequiredService<EndPackages>().Once(stop));

    /// <summary>Makes a backup when one is due, and tries it out.</summary>
    [AutomaticRetry(Attempts = 0)]
    public Task Backup(CancellationToken stop) => Job("backup", services => services.GetRequiredService<MakeBackup>().Due(stop));

    /// <summary>Removes files of stills and clips that no row names.</summary>
    [AutomaticRetry(Attempts = 0)]
    public Task SweepMedia(CancellationToken stop) => Job("sweep-media", services => services.GetRequiredService<SweepMedia>().Once(stop));

    /// <summary>Looks how things stand, for whoever watches from outside.</summary>
    [AutomaticRetry(Attempts = 0)]
    public Task Measure(CancellationToken stop) => Job("measure", services => services.GetRequiredService<ReadOffice>().Now(stop));

    private static async Task<SweepResult> SweepAll(IServiceProvider services, CancellationToken stop)
    {
        await services.GetRequiredService<SweepBounces>().Once(stop);
        await services.GetRequiredService<LapseHolds>().Due(stop);
        await services.GetRequiredService<SweepDeviceFiles>().Once(stop);
        await services.GetRequiredService<SweepStudentFiles>().Once(stop);
        await services.GetRequiredService<SweepSignposts>().Once(stop);

        // Last, as much mail may take most of the minute.
        var result = await services.GetRequiredService<SweepMessages>().Once(stop);
        services.GetRequiredService<OfficeMeter>().Swept(result);
        return result;
    }

    private async Task<T> Job<T>(string name, Func<IServiceProvider, Task<T>> act)
    {
        await using var scope = scopes.CreateAsyncScope();
        return await scope.ServiceProvider.GetRequiredService<OfficeMeter>().Job(name, () => act(scope.ServiceProvider));
    }
}
