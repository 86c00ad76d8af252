using CoachOffice.Data.Moving;
using CoachOffice.UseCases.Tests.Fixtures;

namespace CoachOffice.UseCases.Tests.Safekeeping;

public sealed class ServerDumpTests(PostgreSqlOffice office, Templates templates) : IClassFixture<PostgreSqlOffice>
{
    /// <summary>The server's own form holds the same moment.</summary>
    [Fact]
    public async Task The_servers_own_program_brings_the_same_back()
    {
        var stop = TestContext.Current.CancellationToken;
        var it = await BackedUp.Begin(office);
        var before = await it.Office.Read(db => db.Prints(stop));
        await it.Make();
        var dump = Path.Combine(it.Backups[0], "office.dump");
        Assert.True(File.Exists(dump), "pg_dump comes with the server these tests need.");
        await using var empty = await templates.PostgreSql.Bare();
        await PgRestore.Into(empty.Database, dump, stop);

        await using var side = new MoveSide(empty.Database);
        Assert.Equal(before, await side.Db.Prints(stop));
    }
}
