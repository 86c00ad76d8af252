using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.Fixtures;

/// <summary>Looks for words in every column of every table, whatever its type, so that nothing kept by mistake escapes.</summary>
public static class TextSearch
{
    /// <summary>Where the words occur, as <c>table.column: word</c>; case does not matter.</summary>
    public static async Task<IReadOnlyList<string>> Everywhere(TestOffice office, params string[] words)
    {
        ArgumentNullException.ThrowIfNull(office);
        var columns = await office.Read(db => Task.FromResult(
            db.Model.GetRelationalModel().Tables.SelectMany(t => t.Columns.Select(c => (Table: t.Name, Column: c.Name))).ToList()));
        Assert.True(columns.Count > 150, "The search covers fewer columns than the office has.");
        var found = new List<string>();
        foreach (var (table, column) in columns)
        {
            foreach (var word in words)
                if (await Holds(office, table, column, word)) found.Add($"{table}.{column}: {word}");
        }

        return found;
    }

    private static Task<bool> Holds(TestOffice office, string table, string column, string word) => office.Read(async db =>
    {
        // Names come from the model; the word is a parameter.
        var sql = $"SELECT COUNT(*) AS \"Value\" FROM \"{table}\" WHERE LOWER(CAST(\"{column}\" AS TEXT)) LIKE {{0}}";
        var rows = await db.Database.SqlQueryRaw<long>(sql, $"%{word.ToLowerInvariant()}%").SingleAsync();
        return rows > 0;
    });
}
