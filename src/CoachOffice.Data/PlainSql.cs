using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace CoachOffice.Data;

/// <summary>Questions asked past the translation of queries: before the office is open that alone costs more than all the answers, and so it does where one is asked for every single mail.</summary>
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

    /// <summary>The one number a query answers; its values by name.</summary>
    public static async Task<long> Count(this OfficeDb db, string sql, IReadOnlyList<(string Name, object Value)> values, CancellationToken stop)
    {
        await db.Database.OpenConnectionAsync(stop);
        try
        {
            await using var command = db.Database.GetDbConnection().CreateCommand();
            command.CommandText = sql;
            command.Transaction = db.Database.CurrentTransaction?.GetDbTransaction();
            foreach (var (name, value) in values)
            {
                var parameter = command.CreateParameter();
                (parameter.ParameterName, parameter.Value) = (name, value);
                command.Parameters.Add(parameter);
            }

            return (long)(await command.ExecuteScalarAsync(stop))!;
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
