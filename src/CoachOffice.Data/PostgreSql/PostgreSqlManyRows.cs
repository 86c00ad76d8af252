using CoachOffice.Data.Bulk;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace CoachOffice.Data.PostgreSql;

/// <summary>The database's own COPY.</summary>
internal sealed class PostgreSqlManyRows(OfficeDb db) : IManyRows
{
    public async Task Add<T>(IReadOnlyList<T> rows, CancellationToken stop)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(rows);
        var columns = RowColumns.Of<T>(db);
        var connection = (NpgsqlConnection)db.Database.GetDbConnection();
        await using var writer = await connection.BeginBinaryImportAsync($"COPY {columns.Table} ({string.Join(", ", columns.Names)}) FROM STDIN (FORMAT BINARY)", stop);
        foreach (var row in rows)
        {
            await writer.StartRowAsync(stop);
            for (var i = 0; i < columns.Names.Count; i++)
            {
                if (columns.Value(row, i) is { } value) await writer.WriteAsync(value, columns.Types[i], stop);
                else await writer.WriteNullAsync(stop);
            }
        }

        await writer.CompleteAsync(stop);
    }
}
