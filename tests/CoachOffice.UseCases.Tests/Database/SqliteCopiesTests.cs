using CoachOffice.Data;
using CoachOffice.Data.Sqlite;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.Database;

public sealed class SqliteCopiesTests(SqliteOffice fixture) : IClassFixture<SqliteOffice>
{
    [Fact]
    public async Task Before_an_update_the_file_is_copied_and_three_copies_are_kept()
    {
        var office = await fixture.Another(opened: true);
        var file = new SqliteConnectionStringBuilder(office.Database.ConnectionString).DataSource;
        var folder = Path.Combine(Path.GetDirectoryName(file)!, "copies");

        foreach (var migration in new[] { "20260101_One", "20260102_Two", "20260103_Three", "20260104_Four" })
        {
            await office.Read(async db =>
            {
                await new SqliteKeeper(db).Copy(migration, TestContext.Current.CancellationToken);
                return 0;
            });
        }

        var names = Directory.GetFiles(folder).Select(Path.GetFileName).Order(StringComparer.Ordinal).ToList();
        Assert.Equal(["before-update-of-20260102_Two.db", "before-update-of-20260103_Three.db", "before-update-of-20260104_Four.db"], names);
        await using var copy = new OfficeDb(OfficeDatabase.InFile(Path.Combine(folder, names[^1]!)).Options());
        Assert.Equal("Harbour Road Golf Practice", (await copy.Practices.SingleAsync()).Name);
    }
}
