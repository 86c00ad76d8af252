using CoachOffice.Data;
using CoachOffice.Data.Moving;
using CoachOffice.Data.Safekeeping;
using CoachOffice.Domain.Lessons;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.Safekeeping;

public abstract class RestoreBackupTests(OfficeFixture fixture, Templates templates)
{
    private static readonly CancellationToken Stop = TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_fresh_machine_gets_every_plan_draft_and_still_back_byte_for_byte()
    {
        var it = await BackedUp.Begin(fixture);
        var before = await it.Office.Read(db => db.Prints(Stop));
        var drafts = await it.Office.Read(db => Drafts(db));
        var stills = it.MediaFiles(it.Office.Folder).ToDictionary(f => Path.GetFileName(f), File.ReadAllBytes);
        await it.Make();
        var fresh = DataFolder.At(Path.Combine(it.Office.Folder, "fresh"));
        var database = OfficeDatabase.InFile(fresh.Inside("office.db"));

        var restored = await new RestoreBackup(it.Backups[0], it.Office.Time).Into(database, fresh, Stop);

        Assert.True(restored.Succeeded, string.Join(' ', restored.Refusals));
        await using var db = new OfficeDb(database.Options());
        Assert.Equal(before, await db.Prints(Stop));
        Assert.NotEmpty(drafts);
        Assert.Equal(drafts, await Drafts(db));
        var back = it.MediaFiles(fresh.Path).ToDictionary(f => Path.GetFileName(f), File.ReadAllBytes);
        Assert.Equal(2, back.Count);
        Assert.All(stills, still => Assert.Equal(still.Value, back[still.Key]));
        Assert.Equal(["media", "office.db"], Directory.EnumerateFileSystemEntries(fresh.Path).Select(e => Path.GetFileName(e)!).Where(n => !n.StartsWith("office.db-", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
        await db.DisposeAsync();
        database.LetGo();
    }

    [Fact]
    public async Task A_backup_goes_back_into_an_empty_server_whatever_made_it()
    {
        var it = await BackedUp.Begin(fixture);
        var before = await it.Office.Read(db => db.Prints(Stop));
        await it.Make();
        if (templates.PostgreSql.Missing is { } why) Assert.Skip(why);
        await using var empty = await templates.PostgreSql.Copy(opened: false);
        var fresh = DataFolder.At(Path.Combine(it.Office.Folder, "fresh"));

        var restored = await new RestoreBackup(it.Backups[0], it.Office.Time).Into(empty.Database, fresh, Stop);

        Assert.True(restored.Succeeded, string.Join(' ', restored.Refusals));
        await using var side = new MoveSide(empty.Database);
        Assert.Equal(before, await side.Db.Prints(Stop));
        Assert.Equal(2, it.MediaFiles(fresh.Path).Count);
        Assert.Equal("move-not-empty", (await new RestoreBackup(it.Backups[0], it.Office.Time).Into(empty.Database, DataFolder.At(Path.Combine(it.Office.Folder, "again")), Stop)).Refusals.Single().Code);
        Assert.Empty(it.MediaFiles(Path.Combine(it.Office.Folder, "again")));
    }

    [Fact]
    public async Task Nothing_is_brought_back_over_what_is_there()
    {
        var it = await BackedUp.Begin(fixture);
        await it.Make();
        var taken = DataFolder.At(Path.Combine(it.Office.Folder, "taken"));
        await File.WriteAllTextAsync(taken.Inside("office.db"), "somebody's", Stop);
        var clips = DataFolder.At(Path.Combine(it.Office.Folder, "clips"));
        Directory.CreateDirectory(clips.Inside("media"));
        await File.WriteAllTextAsync(Path.Combine(clips.Inside("media"), "clip"), "somebody's", Stop);

        foreach (var place in (DataFolder[])[taken, clips])
        {
            var refused = await new RestoreBackup(it.Backups[0], it.Office.Time).Into(OfficeDatabase.InFile(place.Inside("office.db")), place, Stop);
            Assert.Equal("restore-not-empty", refused.Refusals.Single().Code);
        }

        Assert.Equal("somebody's", await File.ReadAllTextAsync(taken.Inside("office.db"), Stop));
        Assert.Equal(["clip"], it.MediaFiles(clips.Path).Select(f => Path.GetFileName(f)!));
    }

    [Theory]
    [InlineData("office.db", "backup-damaged")]
    [InlineData("manifest.json", "backup-damaged")]
    [InlineData("", "backup-damaged")]
    public async Task A_damaged_backup_is_refused_before_anything_is_written(string what, string code)
    {
        var it = await BackedUp.Begin(fixture);
        await it.Make();
        var file = what.Length > 0 ? Path.Combine(it.Backups[0], what) : it.MediaFiles(it.Shelf)[1];
        var bytes = await File.ReadAllBytesAsync(file, Stop);
        bytes[bytes.Length / 2] ^= 0xFF;
        await File.WriteAllBytesAsync(file, what == "manifest.json" ? bytes[..(bytes.Length / 2)] : bytes, Stop);
        var fresh = DataFolder.At(Path.Combine(it.Office.Folder, "fresh"));

        var refused = await new RestoreBackup(it.Backups is [var backup, ..] ? backup : Path.GetDirectoryName(file)!, it.Office.Time).Into(OfficeDatabase.InFile(fresh.Inside("office.db")), fresh, Stop);

        Assert.Equal(code, refused.Refusals.Single().Code);
        Assert.Empty(Directory.EnumerateFileSystemEntries(fresh.Path));
    }

    [Fact]
    public async Task A_backup_taken_while_somebody_works_is_of_one_moment()
    {
        var it = await BackedUp.Begin(fixture);
        using var enough = new CancellationTokenSource();
        var work = Task.Run(async () =>
        {
            for (var i = 0; !enough.IsCancellationRequested && i < 60; i++) await Plans.Scene.LessonOf(it.Office, it.Scene.Student, new NodaTime.LocalDate(2026, 3, 1));
        }, Stop);

        var made = await it.Make();
        await enough.CancelAsync();
        await work;

        // A lesson and its readings are one transaction: whatever moment it was, no lesson stands there with half of them.
        Assert.Equal(Domain.Safekeeping.SafetyCopyState.Proved, made.State);
        var copy = OfficeDatabase.InFile(Path.Combine(it.Backups[0], "office.db"));
        await using var db = new OfficeDb(copy.Options());
        var readings = await db.Readings.GroupBy(r => r.LessonId).Select(g => g.Count()).Distinct().ToListAsync(Stop);
        Assert.Equal([9], readings);
        await db.DisposeAsync();
        copy.LetGo();
    }

    private static Task<List<string>> Drafts(OfficeDb db) =>
        db.StoredDrafts.AsNoTracking().OrderBy(d => d.Id).Select(d => d.Json + "\n" + d.InputJson + "\n" + d.RulebookSha256).ToListAsync(Stop);
}

public sealed class RestoreBackupOnSqlite(SqliteOffice office, Templates templates) : RestoreBackupTests(office, templates), IClassFixture<SqliteOffice>;

public sealed class RestoreBackupOnPostgreSql(PostgreSqlOffice office, Templates templates) : RestoreBackupTests(office, templates), IClassFixture<PostgreSqlOffice>;
