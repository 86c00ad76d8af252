using CoachOffice.UseCases.Tests.Fixtures;

[assembly: AssemblyFixture(typeof(Templates))]

namespace CoachOffice.UseCases.Tests.Fixtures;

/// <summary>The templates of both databases, made once when first asked for, removed at the end.</summary>
public sealed class Templates : IAsyncDisposable
{
    public SqliteTemplate Sqlite { get; } = new();

    public PostgreSqlTemplate PostgreSql { get; } = new();

    public async ValueTask DisposeAsync()
    {
        await Sqlite.DisposeAsync();
        await PostgreSql.DisposeAsync();
    }
}
