using CoachOffice.Data;
using Microsoft.Extensions.Diagnostics.HealthChecks;

namespace CoachOffice.Web.Shell;

/// <summary>The office is well when its database answers.</summary>
internal sealed class DatabaseHealth(OfficeDb db) : IHealthCheck
{
    public async Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default) =>
        await db.Database.CanConnectAsync(cancellationToken) ? HealthCheckResult.Healthy() : HealthCheckResult.Unhealthy("The database does not answer.");
}
