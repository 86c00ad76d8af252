using System.Globalization;
using CoachOffice.Data.Moving;
using CoachOffice.Data.Safekeeping;
using CoachOffice.Data.Sqlite;
using Npgsql;

namespace CoachOffice.Data.PostgreSql;

/// <summary>Every table in one snapshot into an SQLite file, and pg_dump of the same snapshot where it is at hand.</summary>
internal sealed class PostgreSqlSnapshot(OfficeDatabase database) : ISnapshot
{
    // Any constant of our own, beside the one of preparing.
    private const long LockKey = 0x0FF1CF;

    public async Task<SnapshotFiles> Take(string folder, CancellationToken stop)
    {
        var path = Path.Combine(folder, SnapshotFiles.DatabaseName);
        var dump = Path.Combine(folder, SnapshotFiles.DumpName);
        var dumped = false;
        var move = new MoveOffice(database, new OfficeDatabase(DatabaseProvider.Sqlite, $"Data Source={path};Pooling=False"))
        {
            Still = false,
            AtThatMoment = async (source, end) => dumped = await PostgreSqlDump.Write(database.ConnectionString, await Exported(source, end), dump, end),
        };
        var moved = await move.Now(null, stop);
        if (!moved.Succeeded) throw new InvalidOperationException(moved.Refusals[0].Sentence);
        SingleFile.Of(path);
        return new SnapshotFiles(path, dumped ? dump : null);
    }

    /// <summary>Held by a connection of its own, so it ends with the program.</summary>
    public async Task<IAsyncDisposable?> Turn(CancellationToken stop)
    {
        var connection = new NpgsqlConnection(database.ConnectionString);
        await connection.OpenAsync(stop);
        await using var command = new NpgsqlCommand(string.Create(CultureInfo.InvariantCulture, $"SELECT pg_try_advisory_lock({LockKey})"), connection);
        if (await command.ExecuteScalarAsync(stop) is true) return new Hold(connection);
        await connection.DisposeAsync();
        return null;
    }

    private static async Task<string> Exported(OfficeDb source, CancellationToken stop)
    {
        await using var command = source.Command("SELECT pg_export_snapshot()");
        return (string)(await command.ExecuteScalarAsync(stop))!;
    }

    private sealed class Hold(NpgsqlConnection connection) : IAsyncDisposable
    {
        public async ValueTask DisposeAsync()
        {
            // The pool would give the connection on with the lock.
            await using (var command = new NpgsqlCommand(string.Create(CultureInfo.InvariantCulture, $"SELECT pg_advisory_unlock({LockKey})"), connection)) await command.ExecuteNonQueryAsync();
            await connection.DisposeAsync();
        }
    }
}
