using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.Data.Sqlite;

internal sealed class SqliteKeeper(OfficeDb db) : IDatabaseKeeper
{
    private const int CopiesKept = 3;

    private string File => System.IO.Path.GetFullPath(new SqliteConnectionStringBuilder(db.Database.GetConnectionString()).DataSource);

    /// <summary>Whoever holds the file lock is alone, so a row left in the migrations' own lock table is from a killed program; with it every start would wait for ever.</summary>
    public async Task<IAsyncDisposable> Alone(CancellationToken stop)
    {
        var held = await FileHold.Take(File + ".preparing", stop);
        if (await HasTable("__EFMigrationsLock", stop)) await db.Run("DELETE FROM \"__EFMigrationsLock\"", stop);
        return held;
    }

    public async Task<IReadOnlyList<string>> Applied(CancellationToken stop) =>
        await HasTable("__EFMigrationsHistory", stop) ? await db.Texts(IDatabaseKeeper.History, stop) : [];

    public async Task Copy(string lastMigration, CancellationToken stop)
    {
        var folder = Directory.CreateDirectory(System.IO.Path.Combine(System.IO.Path.GetDirectoryName(File)!, "copies"));
        var target = System.IO.Path.Combine(folder.FullName, $"before-update-of-{lastMigration}.db");
        System.IO.File.Delete(target);
        await db.Database.ExecuteSqlAsync($"VACUUM INTO {target}", stop);
        foreach (var old in folder.GetFiles("before-update-of-*.db").OrderByDescending(f => f.Name, StringComparer.Ordinal).Skip(CopiesKept)) old.Delete();
    }

    /// <summary>The log mode stays with the file; readers then never wait for the writer. Nothing else sets it.</summary>
    public async Task EnsureBackstops(CancellationToken stop)
    {
        await db.Run("PRAGMA journal_mode=WAL", stop);
        await db.Run(SqliteBackstops.Sql, stop);
    }

    // Best effort: a reader that is still at work keeps its part of the log until the next checkpoint.
    public Task ForgetThePast(CancellationToken stop) => db.Database.ExecuteSqlRawAsync("PRAGMA wal_checkpoint(TRUNCATE)", stop);

    private async Task<bool> HasTable(string name, CancellationToken stop) =>
        (await db.Texts($"SELECT name FROM sqlite_master WHERE type = 'table' AND name = '{name}'", stop)).Count > 0;
}
