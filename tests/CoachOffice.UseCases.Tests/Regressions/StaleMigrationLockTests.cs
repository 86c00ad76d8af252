using CoachOffice.Data;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.Regressions;

/// <summary>A program killed while it migrated left a row in the migrations' lock table; every later start then waited for ever.</summary>
public sealed class StaleMigrationLockTests(SqliteOffice fixture) : IClassFixture<SqliteOffice>
{
    [Fact(Timeout = 30_000)]
    public async Task A_lock_left_by_a_killed_program_does_not_keep_the_next_from_starting()
    {
        var office = await fixture.Another(opened: true);
        await office.Read(db => db.Database.ExecuteSqlRawAsync(
            "CREATE TABLE IF NOT EXISTS \"__EFMigrationsLock\" (\"Id\" INTEGER NOT NULL PRIMARY KEY, \"Timestamp\" TEXT NOT NULL);"
            + "INSERT INTO \"__EFMigrationsLock\" VALUES (1, '2026-01-01 00:00:00+00:00')"));

        Assert.Null(await office.Do((PrepareDatabase prepare) => prepare.Now(TestContext.Current.CancellationToken)));
    }
}
