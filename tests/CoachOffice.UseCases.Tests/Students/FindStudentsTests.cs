using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace CoachOffice.UseCases.Tests.Students;

public abstract class FindStudentsTests(OfficeFixture fixture) : IAsyncLifetime
{
    private TestOffice _office = null!;

    public async ValueTask InitializeAsync()
    {
        _office = await fixture.Another(opened: true);
        await _office.Register(AStudent.Named("Žofie", "Dvořáková"));
        await _office.Register(AStudent.Named("Anna", "Berg"));
        await _office.Register(AStudent.Named("Bert", "Ånnason") with { Email = "b_100%sure@example.org" });
        await _office.Register(AStudent.Named("Joanna", "Álvarez") with { Phone = "+34 910 555 100" });
        var gone = await _office.Register(AStudent.Named("Anna", "Archived"));
        await _office.Must((ArchiveStudent archive) => archive.Now(gone, _office.Desk));
        await _office.Register(AStudent.Junior("Kit", "Back\\Slash"));
    }

    [Theory]
    [InlineData("zofie", "Žofie Dvořáková")]
    [InlineData("DVOŘ", "Žofie Dvořáková")]
    [InlineData("dvořáková zof", "Žofie Dvořáková")]
    [InlineData("anna", "Joanna Álvarez|Bert Ånnason|Anna Berg")]
    [InlineData("berg anna", "Anna Berg")]
    [InlineData("910 555", "Joanna Álvarez")]
    [InlineData("  anna   berg ", "Anna Berg")]
    [InlineData("%", "Bert Ånnason")]
    [InlineData("_", "Bert Ånnason")]
    [InlineData("b_1", "Bert Ånnason")]
    [InlineData("b%1", "")]
    [InlineData("\\", "Kit Back\\Slash")]
    [InlineData("'; DROP TABLE \"Students\"; --", "")]
    [InlineData("nobody", "")]
    [InlineData("anna\0berg", "Anna Berg")]
    [InlineData("\ud83d", "")]
    [InlineData("", "Joanna Álvarez|Bert Ånnason|Kit Back\\Slash|Anna Berg|Žofie Dvořáková")]
    public async Task Every_word_typed_is_looked_for_without_case_and_marks(string typed, string found)
    {
        var list = await _office.Do((FindStudents find) => find.Matching(typed, 1, archived: false));

        Assert.Equal(found, string.Join('|', list.Rows.Select(r => r.Name)));
        Assert.Equal(list.Rows.Count, list.Total);
    }

    [Fact]
    public async Task Archived_students_are_found_only_among_the_archived()
    {
        var list = await _office.Do((FindStudents find) => find.Matching("anna", 1, archived: true));

        Assert.Equal("Anna Archived", list.Rows.Single().Name);
    }

    [Fact]
    public async Task A_minor_is_listed_with_the_guardians_address()
    {
        var list = await _office.Do((FindStudents find) => find.Matching("kit", 1, archived: false));

        Assert.Equal((true, "mara.backslash@example.org"), (list.Rows.Single().IsMinor, list.Rows.Single().Contact));
    }

    [Fact]
    public async Task A_long_list_comes_in_pages()
    {
        for (var n = 0; n < StudentList.PageSize + 2; n++) await _office.Register(AStudent.Named("Page", $"Person {n:000}"));

        var first = await _office.Do((FindStudents find) => find.Matching("page person", 1, archived: false));
        var second = await _office.Do((FindStudents find) => find.Matching("page person", 2, archived: false));

        Assert.Equal((50, 52, 2), (first.Rows.Count, first.Total, first.Pages));
        Assert.Equal(["Page Person 050", "Page Person 051"], second.Rows.Select(r => r.Name));
    }

    [Fact]
    public async Task A_search_is_one_statement_that_filters_counts_and_limits_in_the_database()
    {
        using var log = new CommandLog();
        await using var node = await TestOffice.On(_office.Database, opened: true, services => services.AddSingleton<ILoggerProvider>(log));

        await node.Do((FindStudents find) => find.Matching("anna berg", 1, archived: false));

        var statement = Assert.Single(log.Statements, s => s.Contains("FROM \"Students\"", StringComparison.Ordinal));
        Assert.Equal(4, statement.Split("LIKE").Length - 1);
        Assert.Contains("ESCAPE", statement, StringComparison.Ordinal);
        Assert.Contains("LIMIT", statement, StringComparison.Ordinal);
        Assert.DoesNotContain("anna", statement, StringComparison.OrdinalIgnoreCase);
        TestContext.Current.SendDiagnosticMessage("{0}", statement);
    }

    public ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        return ValueTask.CompletedTask;
    }
}

public sealed class FindStudentsOnSqlite(SqliteOffice office) : FindStudentsTests(office), IClassFixture<SqliteOffice>;

public sealed class FindStudentsOnPostgreSql(PostgreSqlOffice office) : FindStudentsTests(office), IClassFixture<PostgreSqlOffice>;
