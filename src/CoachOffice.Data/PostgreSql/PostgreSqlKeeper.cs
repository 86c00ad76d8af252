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
        await db.Run($"SELECT pg_advisory_lock({LockKey})", stop);
        return new Hold(db);
    }

    public async Task<IReadOnlyList<string>> Applied(CancellationToken stop) =>
        await db.Texts("SELECT 'here' WHERE to_regclass('\"__EFMigrationsHistory\"') IS NOT NULL", stop) is [] ? [] : await db.Texts(IDatabaseKeeper.History, stop);

    public Task Copy(string lastMigration, CancellationToken stop) => Task.CompletedTask;

    public Task EnsureBackstops(CancellationToken stop) => db.Run(PostgreSqlBackstops.Sql, stop);

    private sealed class Hold(OfficeDb db) : IAsyncDisposable
    {
        public async ValueTask DisposeAsync()
        {
            await db.Run($"SELECT pg_advisory_unlock({LockKey})", CancellationToken.None);
            await db.Database.CloseConnectionAsync();
        }
    }

    /// <summary>The log belongs to the administrator's backups.</summary>
    public Task ForgetThePast(CancellationToken stop) => Task.CompletedTask;
}
