using CoachOffice.Data;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace CoachOffice.UseCases.Tests.Database;

/// <summary>No database is opened: the text is only read.</summary>
public sealed class WrittenSchemaTests
{
    [Theory]
    [InlineData(DatabaseProvider.Sqlite, "Data Source=none.db")]
    [InlineData(DatabaseProvider.PostgreSql, "Host=localhost;Database=none")]
    public async Task The_written_schema_is_what_the_migrations_would_do(DatabaseProvider provider, string connection)
    {
        await using var db = new OfficeDb(new OfficeDatabase(provider, connection).Options());

        var written = await WrittenSchema.Of(db, TestContext.Current.CancellationToken);

        var due = Lines(db.GetService<IMigrator>().GenerateScript());
        Assert.True(due.SequenceEqual(Lines(written)), "Schema.sql is stale, write it again as DEVELOPERS.md says under Migrations.");
    }

    private static string[] Lines(string sql) => [.. sql.ReplaceLineEndings("\n").Split('\n').Select(line => line.TrimEnd()).Where(line => line.Length > 0)];
}
