using CoachOffice.Web.Shell.Starting;
using CoachOffice.Web.Shell.Watching;
using Hangfire;

namespace CoachOffice.Web.Shell.Clock;

/// <summary>Starts the clock after the first answer and the rulebook: writes the minutely job and sweeps once, so that what fell due while the office was closed goes out now.</summary>
internal sealed partial class ClockStart(FirstAnswer first, ShippedBookStart book, IServiceProvider services, ILogger<ClockStart> log) : IHostedService, IDisposable
{
    private const string Minutely = "* * * * *";
    private const string Job = "sweep";
    private const string Hourly = "17 * * * *";
    private const string MediaJob = "sweep-media";
    private const string EveryQuarter = "3,18,33,48 * * * *";
    private const string TimedJob = "write-by-time";
    private const string PackageJob = "end-packages";
    private const string MeasureJob = "measure";

    // A backup of many clips must not keep the mail of the minute waiting; each job is alone by itself.
    private const int Workers = 2;
    private const string HourlyBackup = "7 * * * *";
    private const string BackupJob = "backup";

    private BackgroundJobServer? _server;

    /// <summary>True once jobs are run.</summary>
    public bool IsGoing => _server is not null;

    /// <summary>Ends when the clock goes, or never will.</summary>
    public Task Started { get; private set; } = Task.CompletedTask;

    public Task StartAsync(CancellationToken cancellationToken)
    {
        Started = Task.Run(Start, cancellationToken);
        return Task.CompletedTask;
    }

    public async Task StopAsync(CancellationToken cancellationToken)
    {
        await Started.WaitAsync(cancellationToken);
        if (_server is null) return;
        _server.SendStop();
        await _server.WaitForShutdownAsync(cancellationToken);
    }

    public void Dispose() => _server?.Dispose();

    private async Task Start()
    {
        try
        {
            await first.Wait();
            await book.Settled;
            Begin();
        }
        catch (OperationCanceledException)
        {
            // The office stops before the clock began.
        }
        catch (Exception failure)
        {
            LogFailure(failure);
        }
    }

    private void Begin()
    {
        services.GetRequiredService<IRecurringJobManager>().AddOrUpdate<OfficeClock>(Job, clock => clock.Sweep(CancellationToken.None), Minutely);
        services.GetRequiredService<IRecurringJobManager>().AddOrUpdate<OfficeClock>(MediaJob, clock => clock.SweepMedia(CancellationToken.None), Hourly);

        // Hourly, not daily: a practice's night may be anybody's day, and an office is not open at every hour. What ended is found once.
        services.GetRequiredService<IRecurringJobManager>().AddOrUpdate<OfficeClock>(PackageJob, clock => clock.EndPackages(CancellationToken.None), Hourly);
        services.GetRequiredService<IRecurringJobManager>().AddOrUpdate<OfficeClock>(TimedJob, clock => clock.WriteByTime(CancellationToken.None), EveryQuarter);
        services.GetRequiredService<IBackgroundJobClient>().Enqueue<OfficeClock>(clock => clock.WriteByTime(CancellationToken.None));

        // Hourly too: an office that was closed at its hour makes up for it, and what failed is tried again.
        services.GetRequiredService<IRecurringJobManager>().AddOrUpdate<OfficeClock>(BackupJob, clock => clock.Backup(CancellationToken.None), HourlyBackup);
        if (TelemetrySetup.IsOn(services.GetRequiredService<IConfiguration>()))
            services.GetRequiredService<IRecurringJobManager>().AddOrUpdate<OfficeClock>(MeasureJob, clock => clock.Measure(CancellationToken.None), Minutely);
        services.GetRequiredService<IBackgroundJobClient>().Enqueue<OfficeClock>(clock => clock.Sweep(CancellationToken.None));
        var options = new BackgroundJobServerOptions { WorkerCount = Workers, SchedulePollingInterval = TimeSpan.FromSeconds(15), Activator = services.GetRequiredService<JobActivator>() };
        _server = new BackgroundJobServer(options, services.GetRequiredService<JobStorage>());
    }

    [LoggerMessage(Level = LogLevel.Critical, Message = "The clock could not be started: nothing goes out by itself.")]
    private partial void LogFailure(Exception failure);
}
