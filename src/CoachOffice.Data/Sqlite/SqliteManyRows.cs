using CoachOffice.Data.Bulk;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace CoachOffice.Data.Sqlite;

/// <summary>One prepared statement, run once a row.</summary>
internal sealed class SqliteManyRows(OfficeDb db) : IManyRows
{
    public async Task Add<T>(IReadOnlyList<T> rows, CancellationToken stop)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(rows);
        var columns = RowColumns.Of<T>(db);
        await using var command = ((SqliteConnection)db.Database.GetDbConnection()).CreateCommand();
        command.Transaction = (SqliteTransaction)db.Database.CurrentTransaction!.GetDbTransaction();
        command.CommandText = $"INSERT INTO {columns.Table} ({string.Join(", ", columns.Names)}) VALUES ({string.Join(", ", columns.Names.Select((_, i) => $"$p{i}"))})";
        var parameters = columns.Names.Select((_, i) => command.Parameters.Add(new SqliteParameter { ParameterName = $"$p{i}" })).ToList();
        foreach (var row in rows)
        {
            stop.ThrowIfCancellationRequested();
            for (var i = 0; i < parameters.Count; i++) parameters[i].Value = columns.Value(row, i) ?? DBNull.Value;

            // SQLite answers at once; its asynchronous call would only go round about.
            command.ExecuteNonQuery();
        }
    }
}
