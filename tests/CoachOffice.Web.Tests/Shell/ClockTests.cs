using System.Net;
using CoachOffice.Web.Shell.Clock;
using Hangfire;
using Hangfire.Storage;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;

namespace CoachOffice.Web.Tests.Shell;

public sealed class ClockTests : IDisposable
{
    private readonly OfficeHost _office = new();

    public void Dispose() => _office.Dispose();

    [Fact]
    public async Task A_tick_sends_what_is_due_and_a_second_tick_sends_it_not_again()
    {
        var coach = await _office.OpensThePractice();
        await coach.Approves();
        await coach.Open("/follow-ups");
        await coach.Send(".message form[action*='send']");
        using var clock = new OfficeClock(_office.Services.GetRequiredService<IServiceScopeFactory>());

        await clock.Sweep(TestContext.Current.CancellationToken);
        await clock.Sweep(TestContext.Current.CancellationToken);

        Assert.Single(Directory.EnumerateFiles(Path.Combine(_office.DataFolder, "mail"), "plan-delivery.*.eml"));
        await coach.Open("/follow-ups?show=sent");
        Assert.Contains("sent", coach.Page.QuerySelector(".message .state")!.TextContent, StringComparison.Ordinal);
        Assert.Contains(".eml", coach.Page.QuerySelector(".message code")!.TextContent, StringComparison.Ordinal);
    }

    [Fact(Timeout = 60_000)]
    public async Task The_clock_goes_once_the_first_page_was_answered()
    {
        _office.Settings["Office:Clock:Enabled"] = "true";
        await new Visitor(_office).Open("/first-run");

        await _office.Services.GetServices<IHostedService>().OfType<ClockStart>().Single().Started;

        var storage = _office.Services.GetRequiredService<JobStorage>();
        using var connection = storage.GetConnection();
        Assert.Equal(["backup", "end-packages", "sweep", "sweep-media", "write-by-time"], connection.GetRecurringJobs().Select(j => j.Id).Order());
        // The server gives notice of itself from a thread of its own.
        while (storage.GetMonitoringApi().Servers().Count == 0)
        {
            TestContext.Current.CancellationToken.ThrowIfCancellationRequested();
            await Task.Yield();
        }
    }

    [Fact]
    public async Task The_clocks_own_pages_are_the_owners_and_carry_their_own_policy()
    {
        _office.Settings["Office:Clock:Enabled"] = "true";
        var owner = await _office.OpensThePractice();
        var coach = await owner.LetsIn(_office, "coach");

        await owner.Open(ClockSetup.Dashboard);
        Assert.Equal(HttpStatusCode.OK, owner.Status);
        Assert.Contains("script-src 'self' 'unsafe-inline'", string.Join(' ', owner.Answer.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);

        await coach.Open(ClockSetup.Dashboard);
        Assert.Equal(HttpStatusCode.Forbidden, coach.Status);
        var stranger = new Visitor(_office);
        await stranger.Open(ClockSetup.Dashboard);
        Assert.Equal("/sign-in", stranger.Path);
    }
}
