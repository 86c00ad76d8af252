using CoachOffice.Data;
using CoachOffice.Data.Moving;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Tests.Demo;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.AspNetCore.DataProtection.EntityFrameworkCore;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.Database;

/// <summary>A year of a practice goes from a file to a server and back into another file.</summary>
[Collection(DemoCollection.Name)]
public sealed class MoveOfficeTests(DemoOffice demo, PostgreSqlOffice server) : IClassFixture<PostgreSqlOffice>
{
    private static readonly CancellationToken Stop = TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_practice_goes_to_the_other_database_and_back_and_every_table_is_the_same()
    {
        var there = await server.Another(opened: false);
        var here = await new SqliteOfficeCopy(demo).With(FillWhatTheDemoLeavesEmpty);
        var file = OfficeDatabase.InFile(Path.Combine(there.Folder, "back.db"));

        var went = await new MoveOffice(here, there.Database).Now(null, Stop);
        var came = await new MoveOffice(there.Database, file).Now(null, Stop);

        Assert.True(went.Succeeded && came.Succeeded, $"{went.Refusals.Concat(came.Refusals).Select(r => r.Sentence).FirstOrDefault()}");
        var first = await Prints(here);
        Assert.True(first.Sum(p => p.Rows) > 5_000);
        Assert.All((string[])["Students", "StoredDrafts", "LedgerEntries", "AccountPasskeys", "DataProtectionKeys", "TakenTimes"], name => Assert.True(first.Single(p => p.Table == name).Rows > 0, name));
        Assert.Equal(first, await Prints(there.Database));
        Assert.Equal(first, await Prints(file));
        Assert.All(went.Value, p => Assert.True(p.Same));
        await KeepsAndCounts(there.Database);
        await KeepsAndCounts(file);
    }

    [Fact]
    public async Task No_table_of_either_database_is_left_out()
    {
        string[] own = ["__EFMigrationsHistory", "__EFMigrationsLock"];
        var file = await demo.Demo.Read(db => db.Texts("SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'", Stop));
        var there = await server.Office.Read(db => db.Texts("SELECT table_name::text FROM information_schema.tables WHERE table_schema = 'public'", Stop));
        var moved = (await Prints(demo.Demo.Database)).Select(p => p.Table).Order(StringComparer.Ordinal).ToList();

        Assert.Equal(file.Except(own).Order(StringComparer.Ordinal), moved);
        Assert.Equal(there.Except(own).Order(StringComparer.Ordinal), moved);
    }

    [Fact]
    public async Task Nothing_is_mixed_or_written_over()
    {
        var there = await server.Another(opened: true);
        var before = await Prints(there.Database);

        var refused = await new MoveOffice(demo.Demo.Database, there.Database).Now(null, Stop);

        Assert.Equal("move-not-empty", refused.Refusals.Single().Code);
        Assert.Equal(before, await Prints(there.Database));
        Assert.Equal("move-same", (await new MoveOffice(there.Database, there.Database).Now(null, Stop)).Refusals.Single().Code);
        Assert.Equal("move-nothing-there", (await new MoveOffice(OfficeDatabase.InFile(Path.Combine(there.Folder, "nowhere.db")), there.Database).Now(null, Stop)).Refusals.Single().Code);
    }

    [Fact]
    public async Task What_the_server_cannot_take_is_named_and_leaves_it_empty()
    {
        var there = await server.Another(opened: false);
        var odd = await new SqliteOfficeCopy(demo).With(db => db.Database.ExecuteSqlRawAsync("UPDATE \"Practices\" SET \"Name\" = printf('%.200c', 'x')"));

        var refused = await new MoveOffice(odd, there.Database).Now(null, Stop);

        Assert.Equal("move-refused", refused.Refusals.Single().Code);
        Assert.Contains("Practices", refused.Refusals.Single().Sentence, StringComparison.Ordinal);
        Assert.All(await Prints(there.Database), p => Assert.Equal(0, p.Rows));
    }

    [Fact]
    public async Task One_changed_value_changes_the_sum_of_its_table_and_of_no_other()
    {
        var before = await Prints(demo.Demo.Database);
        var changed = await new SqliteOfficeCopy(demo).With(db => db.Database.ExecuteSqlRawAsync("UPDATE \"Readings\" SET \"Value\" = \"Value\" + 0.001 WHERE \"Id\" = (SELECT \"Id\" FROM \"Readings\" LIMIT 1)"));

        var differs = (await Prints(changed)).Zip(before).Where(p => p.First != p.Second).Select(p => p.First.Table);

        Assert.Equal(["Readings"], differs);
    }

    private static async Task<IReadOnlyList<TablePrint>> Prints(OfficeDatabase database)
    {
        await using var side = new MoveSide(database);
        return await side.Db.Prints(Stop);
    }

    /// <summary>Kinds of values no demo row has: a document the server orders in its own way, a moment finer than it keeps.</summary>
    private static async Task FillWhatTheDemoLeavesEmpty(OfficeDb db)
    {
        var account = await db.Users.FirstAsync(Stop);
        var moment = new DateTimeOffset(2026, 3, 2, 9, 30, 0, TimeSpan.Zero);
        account.LockoutEnd = moment.AddTicks(1_234_567);
        db.Add(new IdentityUserPasskey<Guid> { UserId = account.Id, CredentialId = [1, 2, 255], Data = new() { PublicKey = [0, 7], Name = "zebra \"and\" ärger", CreatedAt = moment, SignCount = 3, Transports = ["usb", "nfc"], AttestationObject = [9], ClientDataJson = [8] } });
        db.DataProtectionKeys.Add(new DataProtectionKey { FriendlyName = "key-of-a-test", Xml = "<key />" });
        await db.SaveChangesAsync(Stop);
    }

    private static async Task KeepsAndCounts(OfficeDatabase database)
    {
        await using var db = new OfficeDb(database.Options());
        var refused = await Record.ExceptionAsync(() => db.Database.ExecuteSqlRawAsync("DELETE FROM \"AuditEntries\"", Stop));
        Assert.Contains("never change", refused!.Message, StringComparison.Ordinal);
        var last = await db.DataProtectionKeys.MaxAsync(k => k.Id, Stop);
        db.DataProtectionKeys.Add(new DataProtectionKey { FriendlyName = "the next", Xml = "<key />" });
        await db.SaveChangesAsync(Stop);
        Assert.Equal(last + 1, await db.DataProtectionKeys.MaxAsync(k => k.Id, Stop));
    }
}
