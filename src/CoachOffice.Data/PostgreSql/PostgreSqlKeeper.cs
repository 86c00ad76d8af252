using Microsoft.EntityFrameworkCore;

namespace CoachOffice.Data.PostgreSql;

/// <summary>Migrations lock themselves with an advisory lock that ends with its connection; copies are the administrator's (pg_dump).</summary>
internal sealed class PostgreSqlKeeper(OfficeDb db) : IDatabaseKeeper
{
    // Any constant of our own: two nodes that start together set the backstops one after the other.
    private const long LockKey = 0x0FF1CE;

    public async Task<IAsyncDisposable> Alone(CancellationToken stop)
    {
        await db.Database.OpenConnectionAsync(stop);
        await db.Database.ExecuteSqlAsync($"SELECT pg_advisory_lock({LockKey})", stop);
        return new Hold(db);
    }

    public Task Copy(string lastMigration, CancellationToken stop) => Task.CompletedTask;

    public Task EnsureBackstops(CancellationToken stop) => db.Database.ExecuteSqlRawAsync(PostgreSqlBackstops.Sql, stop);

    private sealed class Hold(OfficeDb db) : IAsyncDisposable
    {
        public async ValueTask DisposeAsync()
        {
            await db.Database.ExecuteSqlAsync($"SELECT pg_advisory_unlock({LockKey})");
            await db.Database.CloseConnectionAsync();
        }
    }

    /// <summary>The log belongs to the administrator's backups.</summary>
    public Task ForgetThePast(CancellationToken stop) => Task.CompletedTask;
}
