using CoachOffice.Data.Safekeeping;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.Data.Sqlite;

/// <summary>SQLite's own online copy: readers and writers go on.</summary>
internal sealed class SqliteSnapshot(OfficeDb db) : ISnapshot
{
    public async Task<SnapshotFiles> Take(string folder, CancellationToken stop)
    {
        var path = Path.Combine(folder, SnapshotFiles.DatabaseName);
        await db.Database.OpenConnectionAsync(stop);
        try
        {
            await using var copy = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ConnectionString);
            await copy.OpenAsync(stop);
            ((SqliteConnection)db.Database.GetDbConnection()).BackupDatabase(copy);

            // One file is all there is to keep.
            await using var command = copy.CreateCommand();
            command.CommandText = "PRAGMA journal_mode=DELETE";
            await command.ExecuteNonQueryAsync(stop);
        }
        finally
        {
            await db.Database.CloseConnectionAsync();
        }

        return new SnapshotFiles(path, null);
    }

    public Task<IAsyncDisposable?> Turn(CancellationToken stop)
    {
        var file = Path.GetFullPath(new SqliteConnectionStringBuilder(db.Database.GetConnectionString()).DataSource);
        return Task.FromResult(FileHold.Try(file + ".backup"));
    }
}
