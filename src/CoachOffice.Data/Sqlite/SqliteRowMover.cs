using System.Data;
using CoachOffice.Data.Moving;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace CoachOffice.Data.Sqlite;

/// <summary>A transaction that begins as the only writer sees the file as of one moment, and keeps every other writer waiting.</summary>
internal sealed class SqliteRowMover(OfficeDb db) : IRowMover
{
    public async Task BeginReading(IReadOnlyList<MovedTable> tables, bool still, CancellationToken stop)
    {
        if (still)
        {
            await db.Database.BeginTransactionAsync(stop);
            return;
        }

        await db.Database.OpenConnectionAsync(stop);
        await db.Database.UseTransactionAsync(((SqliteConnection)db.Database.GetDbConnection()).BeginTransaction(IsolationLevel.Serializable, deferred: true), stop);
    }

    public async Task BeginWriting(IReadOnlyList<MovedTable> tables, CancellationToken stop)
    {
        await db.Database.BeginTransactionAsync(stop);
        await db.Run("PRAGMA defer_foreign_keys=ON", stop);
    }

    public async Task<long> Write(MovedTable table, IAsyncEnumerable<object?[]> rows, CancellationToken stop)
    {
        await using var command = ((SqliteConnection)db.Database.GetDbConnection()).CreateCommand();
        command.Transaction = (SqliteTransaction)db.Database.CurrentTransaction!.GetDbTransaction();
        command.CommandText = $"INSERT INTO {table.Quoted} ({table.ColumnList}) VALUES ({string.Join(", ", table.Columns.Select((_, i) => $"$p{i}"))})";
        var parameters = table.Columns.Select((_, i) => command.Parameters.Add(new SqliteParameter { ParameterName = $"$p{i}" })).ToList();
        long written = 0;
        await foreach (var row in rows.WithCancellation(stop))
        {
            for (var i = 0; i < parameters.Count; i++) parameters[i].Value = row[i] ?? DBNull.Value;

            // SQLite answers at once; its asynchronous call would only go round about.
            command.ExecuteNonQuery();
            written++;
        }

        return written;
    }

    /// <summary>It does so by itself.</summary>
    public Task CountOn(MovedTable table, CancellationToken stop) => Task.CompletedTask;
}
