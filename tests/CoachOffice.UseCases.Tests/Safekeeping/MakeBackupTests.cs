using CoachOffice.Data;
using CoachOffice.Data.Safekeeping;
using CoachOffice.Domain.Safekeeping;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Safekeeping;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Safekeeping;

public abstract class MakeBackupTests(OfficeFixture fixture)
{
    [Fact]
    public async Task A_backup_is_tried_out_and_what_came_of_it_is_kept()
    {
        var it = await BackedUp.Begin(fixture);

        var made = await it.Make();

        Assert.Equal((SafetyCopyState.Proved, 2, 0), (made.State, made.Files, made.Absent));
        Assert.True(made.Rows > 20 && made.ProvedAt is not null);
        Assert.Equal(made.Place, Path.GetFileName(Assert.Single(it.Backups)));
        Assert.DoesNotContain(Directory.EnumerateFileSystemEntries(it.Shelf), e => Path.GetFileName(e).StartsWith('.'));
        Assert.Equal("backup-made", (await it.Office.Read(db => db.AuditEntries.SingleAsync(a => a.SubjectId == made.Id))).Action);
        Assert.Equal(NotAllowed.Code, (await it.Office.Refuses((MakeBackup make) => make.Now(it.Office.Coach))).Single().Code);
    }

    [Fact]
    public async Task The_clock_makes_one_a_day_after_its_hour_and_makes_up_for_what_it_missed()
    {
        var it = await BackedUp.Begin(fixture);

        it.Scene.At(3, 3, hour: 2);
        Assert.Equal(SafetyCopyState.Proved, (await it.Due())?.State);
        Assert.Null(await it.Due());
        it.Scene.At(3, 3, hour: 3, minute: 10);
        Assert.NotNull(await it.Due());
        it.Scene.At(3, 4, hour: 2, minute: 50);
        Assert.Null(await it.Due());
        it.Scene.At(3, 6, hour: 20);
        Assert.NotNull(await it.Due());
        Assert.Equal(2, it.Backups.Count);
    }

    [Fact]
    public async Task Two_nodes_never_make_one_at_once()
    {
        var it = await BackedUp.Begin(fixture);
        var other = await fixture.SecondNodeOf(it.Office);
        await using (await it.Office.Do((WriteBackup write) => write.Turn(default)))
        {
            Assert.Equal("backup-under-way", (await other.Refuses((MakeBackup make) => make.Now(other.Owner))).Single().Code);
            Assert.Null(await other.Do((MakeBackup make) => make.Due(default)));
        }

        await other.Must((MakeBackup make) => make.Now(other.Owner));
    }

    [Fact]
    public async Task A_folder_that_cannot_be_written_is_a_sentence_on_Today_and_the_next_try_mends_it()
    {
        var blocked = Path.Combine(Directory.CreateTempSubdirectory("coachoffice-blocked-").FullName, "backups");
        await File.WriteAllTextAsync(blocked, "a file where the folder should be", TestContext.Current.CancellationToken);
        var it = await BackedUp.Begin(fixture, new BackupSettings { Folder = blocked });

        var failed = await it.Due();

        Assert.Equal(SafetyCopyState.Failed, failed?.State);
        var notice = await it.Office.Do((ReadBackups read) => read.Notice(it.Office.Owner));
        Assert.Contains(blocked, notice, StringComparison.Ordinal);
        Assert.Null(await it.Office.Do((ReadBackups read) => read.Notice(it.Office.Coach)));
        File.Delete(blocked);
        it.Office.Time.Advance(TimeSpan.FromHours(1));
        Assert.Equal(SafetyCopyState.Proved, (await it.Due())?.State);
        Assert.Null(await it.Office.Do((ReadBackups read) => read.Notice(it.Office.Owner)));
        Directory.Delete(Path.GetDirectoryName(blocked)!, recursive: true);
    }

    [Fact]
    public async Task Today_speaks_up_when_the_last_good_one_is_too_old()
    {
        var it = await BackedUp.Begin(fixture);
        await it.Make();

        it.Office.Time.Advance(TimeSpan.FromDays(2));
        Assert.Null(await it.Office.Do((ReadBackups read) => read.Notice(it.Office.Owner)));
        it.Office.Time.Advance(TimeSpan.FromDays(2));
        Assert.Contains("4 days old", await it.Office.Do((ReadBackups read) => read.Notice(it.Office.Owner)), StringComparison.Ordinal);
        Assert.Equal(Duration.FromDays(4), await it.Office.Do((ReadBackups read) => read.Age()));
    }

    [Fact]
    public async Task Old_backups_go_and_take_the_stills_nobody_else_names()
    {
        var it = await BackedUp.Begin(fixture, new BackupSettings { Keep = 1 });
        await it.Make();
        var stills = it.MediaFiles(it.Shelf);
        await it.Office.Change(db => db.MediaItems.ExecuteDeleteAsync());
        it.Office.Time.Advance(TimeSpan.FromMinutes(1));

        await it.Make();

        Assert.Equal(2, stills.Count);
        Assert.Single(it.Backups);
        Assert.Empty(it.MediaFiles(it.Shelf));
    }

    [Fact]
    public async Task A_still_the_office_lost_is_counted_and_one_damaged_on_the_shelf_is_copied_anew()
    {
        var it = await BackedUp.Begin(fixture);
        await it.Make();
        var kept = it.MediaFiles(it.Shelf)[0];
        await File.WriteAllTextAsync(kept, "rot", TestContext.Current.CancellationToken);
        it.Office.Time.Advance(TimeSpan.FromMinutes(1));

        var found = await it.Make();
        it.Office.Time.Advance(TimeSpan.FromMinutes(1));
        var mended = await it.Make();
        File.Delete(it.MediaFiles(it.Office.Folder)[0]);
        Directory.Delete(it.Shelf, recursive: true);
        var without = await it.Make();

        Assert.Equal((SafetyCopyState.Failed, SafetyCopyState.Proved), (found.State, mended.State));
        Assert.Contains("copied anew", found.Problem, StringComparison.Ordinal);
        Assert.Equal((SafetyCopyState.Proved, 1, 1), (without.State, without.Files, without.Absent));
    }
}

public sealed class MakeBackupOnSqlite(SqliteOffice office) : MakeBackupTests(office), IClassFixture<SqliteOffice>;

public sealed class MakeBackupOnPostgreSql(PostgreSqlOffice office) : MakeBackupTests(office), IClassFixture<PostgreSqlOffice>;
