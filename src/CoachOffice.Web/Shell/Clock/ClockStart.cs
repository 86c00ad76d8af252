using Hangfire;

namespace CoachOffice.Web.Shell.Clock;

/// <summary>Starts the clock with the office, after the database is ready.</summary>
internal sealed class ClockStart(IRecurringJobManager recurring, IBackgroundJobClient jobs) : IHostedService
{
    public Task StartAsync(CancellationToken cancellationToken)
    {
        ClockSetup.Start(recurring, jobs);
        return Task.CompletedTask;
    }

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;
}
