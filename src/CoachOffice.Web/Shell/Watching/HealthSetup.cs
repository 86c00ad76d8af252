using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Diagnostics.HealthChecks;

namespace CoachOffice.Web.Shell.Watching;

/// <summary>Three questions for programs, each answered by one word: <c>/health</c> (does the database answer), <c>/health/live</c> (does the program), <c>/health/ready</c> (may visitors be sent here).</summary>
internal static class HealthSetup
{
    private const string Database = "database";
    private const string Ready = "ready";

    public static void AddHealth(this IServiceCollection services)
    {
        services.AddSingleton<ReadyParts>();
        services.AddSingleton<Readiness>();
        services.AddHealthChecks().AddCheck<DatabaseHealth>(Database).Add(new(Ready, static provider => provider.GetRequiredService<Readiness>(), null, null));
    }

    public static void MapHealth(this WebApplication app)
    {
        Map(app, AnonymousPages.Health, Database);
        Map(app, AnonymousPages.Live, null);
        Map(app, AnonymousPages.Ready, Ready);
    }

    private static void Map(WebApplication app, string address, string? check) =>
        app.MapHealthChecks(address, new HealthCheckOptions { Predicate = registration => registration.Name == check }).AllowAnonymous().DisableHttpMetrics();
}
