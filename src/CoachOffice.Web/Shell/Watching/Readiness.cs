using CoachOffice.Data;
using CoachOffice.Web.Shell.Clock;
using CoachOffice.Web.Shell.Starting;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Diagnostics.HealthChecks;

namespace CoachOffice.Web.Shell.Watching;

/// <summary>
/// Whether this node may be sent visitors: its database answers and has this program's schema, a rulebook is in force, the clock goes, the disk takes a file, and
/// it is not about to stop. Asked by strangers too, so what it found is good for two seconds, and what is wrong stands in the log only.
/// </summary>
internal sealed partial class Readiness(IServiceScopeFactory scopes, ReadyParts parts, TimeProvider time, ILogger<Readiness> log) : IHealthCheck, IDisposable
{
    private static readonly TimeSpan Good = TimeSpan.FromSeconds(2);
    private readonly SemaphoreSlim _one = new(1, 1);
    private string? _wrong;
    private long _at;

    public async Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default)
    {
        await _one.WaitAsync(cancellationToken);
        try
        {
            if (_at == 0 || time.GetElapsedTime(_at) >= Good) await Look(cancellationToken);
            return parts.Stopping ? HealthCheckResult.Unhealthy() : _wrong is null ? HealthCheckResult.Healthy() : HealthCheckResult.Unhealthy();
        }
        finally
        {
            _one.Release();
        }
    }

    public void Dispose() => _one.Dispose();

    private async Task Look(CancellationToken stop)
    {
        var before = _wrong;
        await using var scope = scopes.CreateAsyncScope();
        _wrong = await parts.WrongHere(stop) ?? await Wrong(scope.ServiceProvider.GetRequiredService<OfficeDb>(), scope.ServiceProvider.GetRequiredService<SchemaState>(), stop);
        _at = time.GetTimestamp();
        if (_wrong is not null && _wrong != before) LogNotReady(_wrong);
        if (_wrong is null && before is not null) LogReady();
    }

    private static async Task<string?> Wrong(OfficeDb db, SchemaState schema, CancellationToken stop)
    {
        if (!await db.Database.CanConnectAsync(stop)) return "the database does not answer";
        if (!await schema.IsThisPrograms(stop)) return "the database has not this program's schema";
        return await db.BooksInForce.AnyAsync(stop) ? null : "no rulebook is in force";
    }

    [LoggerMessage(Level = LogLevel.Warning, Message = "Not ready for visitors: {Wrong}.")]
    private partial void LogNotReady(string wrong);

    [LoggerMessage(Level = LogLevel.Information, Message = "Ready for visitors again.")]
    private partial void LogReady();
}
