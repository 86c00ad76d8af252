using System.Data.Common;
using System.Runtime.CompilerServices;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace CoachOffice.Data.Moving;

/// <summary>Reads tables as they stand, in the transaction under way.</summary>
internal static class RowReading
{
    /// <summary>Every row, always in the same array, added to a sum on the way.</summary>
    public static async IAsyncEnumerable<object?[]> Rows(this OfficeDb db, MovedTable table, TableSum sum, [EnumeratorCancellation] CancellationToken stop)
    {
        await using var command = db.Command($"SELECT {table.ColumnList} FROM {table.Quoted}");
        await using var reader = await command.ExecuteReaderAsync(stop);
        var row = new object?[table.Columns.Count];
        while (await reader.ReadAsync(stop))
        {
            Cells.Read(reader, table, row);
            sum.Add(row);
            yield return row;
        }
    }

    /// <summary>What a table holds.</summary>
    public static async Task<TablePrint> Print(this OfficeDb db, MovedTable table, CancellationToken stop)
    {
        var sum = new TableSum(table);
        await foreach (var _ in db.Rows(table, sum, stop))
        {
            // Added up on the way.
        }

        return sum.Print();
    }

    /// <summary>What every table holds.</summary>
    public static async Task<IReadOnlyList<TablePrint>> Prints(this OfficeDb db, CancellationToken stop)
    {
        await db.Database.OpenConnectionAsync(stop);
        try
        {
            var prints = new List<TablePrint>();
            foreach (var table in OfficeTables.Of(db)) prints.Add(await db.Print(table, stop));
            return prints;
        }
        finally
        {
            await db.Database.CloseConnectionAsync();
        }
    }

    /// <summary>How many rows a table has.</summary>
    public static async Task<long> CountRows(this OfficeDb db, string table, CancellationToken stop)
    {
        await using var command = db.Command($"SELECT COUNT(*) FROM \"{table}\"");
        return Convert.ToInt64(await command.ExecuteScalarAsync(stop));
    }

    /// <summary>A command on the open connection, in its transaction.</summary>
    public static DbCommand Command(this OfficeDb db, string sql)
    {
        var command = db.Database.GetDbConnection().CreateCommand();
        command.CommandText = sql;
        command.Transaction = db.Database.CurrentTransaction?.GetDbTransaction();
        command.CommandTimeout = 0;
        return command;
    }
}
