using System.Data;
using CoachOffice.Data.Moving;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace CoachOffice.Data.PostgreSql;

/// <summary>Reads in one snapshot, writes by COPY. One statement checks what its rows point at when it ends, so they may point at each other.</summary>
internal sealed class PostgreSqlRowMover(OfficeDb db) : IRowMover
{
    public async Task BeginReading(IReadOnlyList<MovedTable> tables, bool still, CancellationToken stop)
    {
        await db.Database.BeginTransactionAsync(IsolationLevel.RepeatableRead, stop);

        // Before anything is read: the snapshot begins with the first question, and then nobody is writing any more.
        if (still) await Execute($"LOCK TABLE {Names(tables)} IN SHARE MODE", stop);
    }

    public async Task BeginWriting(IReadOnlyList<MovedTable> tables, CancellationToken stop)
    {
        await db.Database.BeginTransactionAsync(stop);
        await Execute($"LOCK TABLE {Names(tables)} IN EXCLUSIVE MODE", stop);
    }

    public async Task<long> Write(MovedTable table, IAsyncEnumerable<object?[]> rows, CancellationToken stop)
    {
        var connection = (NpgsqlConnection)db.Database.GetDbConnection();
        await using var writer = await connection.BeginBinaryImportAsync($"COPY {table.Quoted} ({table.ColumnList}) FROM STDIN (FORMAT BINARY)", stop);
        await foreach (var row in rows.WithCancellation(stop))
        {
            await writer.StartRowAsync(stop);
            for (var i = 0; i < row.Length; i++)
            {
                if (row[i] is { } value) await writer.WriteAsync(value, table.Columns[i].StoreType, stop);
                else await writer.WriteNullAsync(stop);
            }
        }

        return (long)await writer.CompleteAsync(stop);
    }

    public async Task CountOn(MovedTable table, CancellationToken stop)
    {
        if (table.Counted is not { } column) return;
        await Execute($"SELECT setval(pg_get_serial_sequence('{table.Quoted}', '{column}'), GREATEST((SELECT MAX(\"{column}\") FROM {table.Quoted}), 1), (SELECT MAX(\"{column}\") IS NOT NULL FROM {table.Quoted}))", stop);
    }

    private static string Names(IReadOnlyList<MovedTable> tables) => string.Join(", ", tables.Select(t => t.Quoted));

    private async Task Execute(string sql, CancellationToken stop)
    {
        await using var command = db.Command(sql);
        await command.ExecuteNonQueryAsync(stop);
    }
}
