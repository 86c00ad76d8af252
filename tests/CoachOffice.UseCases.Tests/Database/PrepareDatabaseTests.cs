using CoachOffice.Data;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.Database;

public abstract class PrepareDatabaseTests(OfficeFixture fixture)
{
    [Fact]
    public async Task Preparing_again_changes_nothing()
    {
        var office = await fixture.Another(opened: true);

        Assert.Null(await office.Do((PrepareDatabase prepare) => prepare.Now(default)));
        Assert.Null(await office.Do((PrepareDatabase prepare) => prepare.Now(default)));
    }

    [Fact]
    public async Task Two_programs_that_start_together_are_both_ready()
    {
        var office = await fixture.Another(opened: true);

        var refusals = await Task.WhenAll(Enumerable.Range(1, 3).Select(_ => Task.Run(() => office.Do((PrepareDatabase prepare) => prepare.Now(default)))));

        Assert.All(refusals, Assert.Null);
    }

    [Fact]
    public async Task The_model_and_the_migrations_say_the_same()
    {
        Assert.False(await fixture.Office.Read(db => Task.FromResult(db.Database.HasPendingModelChanges())), "The model changed: make the migrations again.");
    }

    [Fact]
    public async Task A_database_of_a_newer_program_is_refused_and_left_alone()
    {
        var office = await fixture.Another(opened: true);
        await office.Read(db => db.Database.ExecuteSqlRawAsync(
            "INSERT INTO \"__EFMigrationsHistory\" (\"MigrationId\", \"ProductVersion\") VALUES ('29990101000000_FromTomorrow', '99.0')"));

        var refusal = await office.Do((PrepareDatabase prepare) => prepare.Now(default));

        Assert.Equal("database-newer", refusal!.Code);
        Assert.Contains("FromTomorrow", refusal.Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("UPDATE \"AuditEntries\" SET \"Action\" = 'nothing'")]
    [InlineData("DELETE FROM \"AuditEntries\"")]
    [InlineData("UPDATE \"KeptRulebooks\" SET \"Text\" = 'other'")]
    [InlineData("DELETE FROM \"KeptRulebooks\"")]
    [InlineData("UPDATE \"ShippedBooks\" SET \"Text\" = 'other'")]
    [InlineData("DELETE FROM \"ShippedBooks\"")]
    [InlineData("UPDATE \"RulebookEditions\" SET \"Why\" = 'other'")]
    [InlineData("DELETE FROM \"RulebookEditions\"")]
    public async Task The_database_itself_refuses_to_change_what_never_changes(string sql)
    {
        var fault = await Record.ExceptionAsync(() => fixture.Office.Read(db => db.Database.ExecuteSqlRawAsync(sql)));

        Assert.Contains("never change", fault!.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_stored_draft_can_be_emptied_but_not_rewritten()
    {
        var office = await fixture.Another(opened: true);
        await office.GivePlan(await office.Register(SeedDemo.Builders.AStudent.Named("Draft", "Keeper")));

        var fault = await Record.ExceptionAsync(() => office.Read(db => db.StoredDrafts.ExecuteUpdateAsync(d => d.SetProperty(x => x.Json, "{\"better\":1}"))));

        Assert.Contains("never change", fault!.Message, StringComparison.Ordinal);
        Assert.Equal(1, await office.Read(db => db.StoredDrafts.ExecuteUpdateAsync(d => d.SetProperty(x => x.Json, ""))));
    }

    [Fact]
    public async Task A_part_that_changes_raises_the_version_of_its_whole()
    {
        var office = await fixture.Another(opened: true);
        var id = await office.GivePlan(await office.Register(SeedDemo.Builders.AStudent.Named("Part", "Whole")));
        var before = (await office.Read(db => db.Plans.SingleAsync(p => p.Id == id))).Version;

        await office.Change(async db =>
        {
            var plan = await db.Plans.Include(p => p.Stages).SingleAsync(p => p.Id == id);
            plan.Stages[0].Begin(new(2026, 3, 2), new(2026, 3, 16));
        });

        var after = await office.Read(db => db.Plans.Include(p => p.Stages).SingleAsync(p => p.Id == id));
        Assert.Equal((before + 1, StageStatus.Current), (after.Version, after.Stages[0].Status));
    }
}

public sealed class PrepareDatabaseOnPostgreSql(PostgreSqlOffice office) : PrepareDatabaseTests(office), IClassFixture<PostgreSqlOffice>;

public sealed class PrepareDatabaseOnSqlite(SqliteOffice office) : PrepareDatabaseTests(office), IClassFixture<SqliteOffice>
{
    [Fact]
    public async Task Each_connection_waits_for_the_lock_and_erases_what_it_deletes()
    {
        string[] names = ["busy_timeout", "secure_delete", "foreign_keys", "synchronous", "journal_mode"];

        var settings = await office.Office.Read(async db =>
        {
            var values = new List<string>();
            foreach (var name in names) values.Add(await Pragma(db, name));
            return values;
        });

        Assert.Equal(["5000", "1", "1", "2", "wal"], settings);
    }

    private static async Task<string> Pragma(OfficeDb db, string name)
    {
        await db.Database.OpenConnectionAsync();
        await using var command = db.Database.GetDbConnection().CreateCommand();
        command.CommandText = $"PRAGMA {name}";
        return $"{await command.ExecuteScalarAsync()}";
    }
}
