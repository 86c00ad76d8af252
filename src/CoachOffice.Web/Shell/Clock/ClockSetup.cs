using CoachOffice.Web.Shell.Security;
using Hangfire;

namespace CoachOffice.Web.Shell.Clock;

/// <summary>Hangfire as the clock, kept in memory: it holds no work of ours, so nothing is lost with it. Setting <c>Office:Clock:Enabled</c> (default true) turns it off.</summary>
internal static class ClockSetup
{
    public const string Dashboard = "/clock";

    public static void AddClock(this WebApplicationBuilder builder)
    {
        if (!IsOn(builder.Configuration)) return;
        builder.Services.AddSingleton<OfficeClock>();
        builder.Services.AddHangfire(static hangfire => hangfire
            .SetDataCompatibilityLevel(CompatibilityLevel.Version_180)
            .UseSimpleAssemblyNameTypeSerializer()
            .UseRecommendedSerializerSettings()
            .UseInMemoryStorage());
        builder.Services.AddSingleton<ClockStart>();
        builder.Services.AddHostedService(static provider => provider.GetRequiredService<ClockStart>());
    }

    /// <summary>The clock's own pages, for the owner; their headers allow the inline script and style they carry.</summary>
    public static void MapClock(this WebApplication app)
    {
        if (!IsOn(app.Configuration)) return;
        app.MapHangfireDashboard(Dashboard, new DashboardOptions { Authorization = [], AppPath = "/settings", DisplayStorageConnectionString = false, DashboardTitle = "Clock", IsReadOnlyFunc = static _ => true })
            .RequireAuthorization(OfficePolicies.Own)
            .WithSecurityHeadersPolicy(SecurityHeaders.ClockDashboard);
    }

    private static bool IsOn(IConfiguration configuration) => configuration.GetValue("Office:Clock:Enabled", defaultValue: true);
}
