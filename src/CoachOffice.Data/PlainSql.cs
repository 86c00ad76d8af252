using Microsoft.EntityFrameworkCore;

namespace CoachOffice.Data;

/// <summary>Questions asked before the office is open, past the translation of queries: that alone costs a cold start more than all the answers.</summary>
internal static class PlainSql
{
    /// <summary>The first column of every row, as text.</summary>
    public static async Task<IReadOnlyList<string>> Texts(this OfficeDb db, string sql, CancellationToken stop)
    {
        await db.Database.OpenConnectionAsync(stop);
        try
        {
            await using var command = db.Database.GetDbConnection().CreateCommand();
            command.CommandText = sql;
            await using var reader = await command.ExecuteReaderAsync(stop);
            var texts = new List<string>();
            while (await reader.ReadAsync(stop)) texts.Add(reader.GetString(0));
            return texts;
        }
        finally
        {
            await db.Database.CloseConnectionAsync();
        }
    }

    /// <summary>Any number of statements, whatever they answer.</summary>
    public static async Task Run(this OfficeDb db, string sql, CancellationToken stop)
    {
        await db.Database.OpenConnectionAsync(stop);
        try
        {
            await using var command = db.Database.GetDbConnection().CreateCommand();
            command.CommandText = sql;
            await command.ExecuteNonQueryAsync(stop);
        }
        finally
        {
            await db.Database.CloseConnectionAsync();
        }
    }
}
