using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Lessons.Imports;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Lessons.Imports;

public abstract class ImportTests(OfficeFixture fixture)
{
    [Fact]
    public async Task Each_day_and_club_becomes_a_lesson_with_a_swing_a_row_in_our_units()
    {
        var office = fixture.Office;
        var coach = await Bringing.For(office);
        var file = await coach.BringsTold(Bringing.Head + Bringing.Swing + Bringing.Swing.Replace("98.4", "100", StringComparison.Ordinal) + "2026-02-20,7 Iron,80,110,-4,0,0,0\n2026-02-21,Driver,97,140,1,0,0,0\n");

        Assert.Equal(ImportState.Done, (await coach.Imports(file)).State);

        var lessons = await office.Read(db => db.Lessons.AsNoTracking().Include(l => l.AllReadings).Include(l => l.Takes).AsSplitQuery().Where(l => l.StudentId == coach.Student).OrderBy(l => l.HeldOn).ThenBy(l => l.Club).ToListAsync());
        Assert.Equal([(20, Club.Driver, 2), (20, Club.Iron, 1), (21, Club.Driver, 1)], lessons.Select(l => (l.HeldOn.Day, l.Club, l.Takes.Count)));
        Assert.All(lessons, l => Assert.Equal((1, office.Coach.Account), (l.Version, l.CoachId)));
        var first = lessons[0].AllReadings.Where(r => r.Measure.Value == "club-speed").OrderBy(r => r.Swing).ToList();
        Assert.Equal([(1, 43.988736), (2, 44.704)], first.Select(r => (r.Swing, r.Value)));
        Assert.All(lessons.SelectMany(l => l.AllReadings), r => Assert.Equal(Instrument.Radar, r.Instrument));
        Assert.All(lessons.SelectMany(l => l.Takes), t => Assert.Equal(View.Device, t.View));
        Assert.DoesNotContain(lessons[0].AllReadings, r => r.Measure.Value == "smash-factor");
        var outcome = await coach.Outcome(file);
        Assert.Equal((4, 24, 3), (outcome.Swings, outcome.Readings, outcome.Lessons.Count));
    }

    [Fact]
    public async Task What_is_kept_is_graded_and_drafted_like_any_lesson_and_leaves_audit_rows()
    {
        var office = fixture.Office;
        var coach = await Bringing.For(office);
        var file = await coach.BringsTold(Bringing.Head + Bringing.Swing);
        await coach.Imports(file);
        var lesson = LessonId.From((await coach.Outcome(file)).Lessons.Single().Lesson);

        var input = await office.Read(db => db.LessonInputs.AsNoTracking().SingleAsync(i => i.LessonId == lesson));
        var audits = await office.Read(db => db.AuditEntries.AsNoTracking().Where(a => a.SubjectId == coach.Student.Value || a.SubjectId == lesson.Value).Select(a => a.Action).ToListAsync());

        Assert.Contains("club-path", input.Json, StringComparison.Ordinal);
        Assert.Contains("device-file-imported", audits);
        Assert.Contains("readings-imported", audits);
    }

    [Fact]
    public async Task A_lesson_that_was_there_takes_the_swings_up_after_its_own()
    {
        var office = fixture.Office;
        var coach = await Bringing.For(office);
        var heading = new LessonHeading(new LocalDate(2026, 2, 20), Club.Driver);
        var lesson = await office.Must((StartLesson start) => start.For(coach.Student, heading, office.Coach));
        await office.Must((SaveLesson save) => save.As(lesson, 1, new LessonForm { Heading = heading, Entries = [new MeasureEntry { Measure = "club-path", Text = "3 4" }] }, office.Coach));
        var file = await coach.BringsTold(Bringing.Head + Bringing.Swing);
        Assert.Equal([lesson], (await coach.Looks(file)).Groups.Single().There);

        await coach.Imports(file, new Dictionary<string, LessonId> { ["2026-02-20.driver"] = lesson });

        var kept = await office.Read(db => db.Lessons.AsNoTracking().Include(l => l.AllReadings).SingleAsync(l => l.StudentId == coach.Student));
        Assert.Equal([(1, 3d), (2, 4d), (3, -1.5)], kept.Readings.Where(r => r.Measure.Value == "club-path").OrderBy(r => r.Swing).Select(r => (r.Swing, r.Value)));
        Assert.True(kept.Version > 2);
        var stale = await office.Refuses((SaveLesson save) => save.As(lesson, 2, new LessonForm { Heading = heading }, office.Coach));
        Assert.Contains(office.Coach.Name, stale.Single().Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_lesson_of_another_student_day_or_club_takes_nothing_up()
    {
        var office = fixture.Office;
        var coach = await Bringing.For(office);
        var other = await Bringing.For(office);
        var lesson = await office.Must((StartLesson start) => start.For(other.Student, new LessonHeading(new LocalDate(2026, 2, 20), Club.Driver), office.Coach));
        var file = await coach.BringsTold(Bringing.Head + Bringing.Swing);

        var order = new ImportOrder(coach.Student, file.Id, new Dictionary<string, LessonId> { ["2026-02-20.driver"] = lesson }, office.Coach);

        Assert.Equal("lesson-not-there", (await office.Refuses((BeginImport begin) => begin.Of(order))).Single().Code);
    }

    [Fact]
    public async Task The_same_file_again_is_refused_with_when_and_who_and_another_student_may_have_it()
    {
        var office = fixture.Office;
        var coach = await Bringing.For(office);
        await coach.Imports(await coach.BringsTold(Bringing.Head + Bringing.Swing));

        var refusal = (await coach.IsRefused(Bringing.Head + Bringing.Swing)).Single();

        Assert.Equal("file-known", refusal.Code);
        Assert.Contains("Carl Coach", refusal.Sentence, StringComparison.Ordinal);
        Assert.Contains("2 March 2026", refusal.Sentence, StringComparison.Ordinal);
        Assert.True((await (await Bringing.For(office)).Brings(Bringing.Head + Bringing.Swing)).IsOpen);
    }

    [Fact]
    public async Task The_same_file_opened_twice_is_imported_once()
    {
        var office = fixture.Office;
        var coach = await Bringing.For(office);
        var (one, two) = (await coach.BringsTold(Bringing.Head + Bringing.Swing), await coach.BringsTold(Bringing.Head + Bringing.Swing));
        await coach.Imports(one);

        var progress = await coach.Imports(two);

        Assert.Equal((ImportState.Refused, "file-known"), (progress.State, progress.Refusals.Single().Code));
        Assert.Equal(1, await office.Read(db => db.Lessons.CountAsync(l => l.StudentId == coach.Student)));
    }

    [Fact]
    public async Task A_stopped_import_leaves_nothing_and_can_be_begun_again()
    {
        var office = fixture.Office;
        var coach = await Bringing.For(office);
        var file = await coach.BringsTold(Bringing.Head + string.Concat(Enumerable.Range(0, 20_000).Select(i => Bringing.Swing.Replace("02-20", $"0{1 + i / 28 % 2}-{1 + i % 28:00}", StringComparison.Ordinal))));
        await office.Must((BeginImport begin) => begin.Of(new ImportOrder(coach.Student, file.Id, Bringing.New, office.Coach)));
        await office.Must((StopImport stop) => stop.Of(coach.Student, file.Id, office.Coach));

        Assert.Equal(ImportState.Stopped, (await coach.Ends(file)).State);
        Assert.Equal((0, 0), await office.Read(async db => (await db.Lessons.CountAsync(l => l.StudentId == coach.Student), await db.Takes.CountAsync(t => db.Lessons.Any(l => l.Id == t.LessonId && l.StudentId == coach.Student)))));
        Assert.Equal(ImportState.Done, (await coach.Imports(file)).State);
        Assert.Equal(20_000, (await coach.Outcome(file)).Swings);
    }

    [Fact]
    public async Task Right_of_the_target_is_in_to_out_for_a_right_handed_student_and_out_to_in_for_a_left_handed_one()
    {
        var office = fixture.Office;
        foreach (var (hand, expected) in new[] { (Hand.Right, -1.5), (Hand.Left, 1.5) })
        {
            var coach = await Bringing.For(office, hand);
            var file = await coach.BringsTold(Bringing.Head + Bringing.Swing, form => form with { Columns = [.. form.Columns.Select(c => c with { Plus = c.Measure is "attack-angle" ? "ours" : c.Measure is "club-path" or "face-to-path" or "start-direction" ? "right" : "" })] });
            await coach.Imports(file);
            var path = await office.Read(db => db.Readings.AsNoTracking().SingleAsync(r => r.Measure == MeasureId.From("club-path") && db.Lessons.Any(l => l.Id == r.LessonId && l.StudentId == coach.Student)));
            Assert.Equal(expected, path.Value);
        }
    }

    [Fact]
    public async Task An_open_file_is_its_bringers_alone_and_the_desk_has_none()
    {
        var office = fixture.Office;
        var coach = await Bringing.For(office);
        var file = await coach.BringsTold(Bringing.Head + Bringing.Swing);

        Assert.Equal("file-not-found", (await office.Refuses((PreviewDeviceFile look) => look.Of(coach.Student, file.Id, office.Owner))).Single().Code);
        Assert.Equal("file-not-found", (await office.Refuses((ReadColumns look) => look.Of(coach.Student, file.Id, office.Owner))).Single().Code);
        Assert.Equal("file-not-found", (await office.Refuses((DropDeviceFile drop) => drop.Of(coach.Student, file.Id, office.Owner))).Single().Code);
        Assert.Equal("not-allowed", (await office.Refuses((DeviceFileDoor door) => door.Find(coach.Student, file.Id, office.Desk))).Single().Code);
        Assert.Equal("not-allowed", (await coach.Tries("a,b\n1,2\n"u8.ToArray(), office.Desk)).Refusals.Single().Code);
        Assert.Empty(await office.Must((ListDeviceFiles list) => list.Of(coach.Student, office.Owner)));
        await coach.Imports(file);
        Assert.Equal(1, (await office.Must((ListDeviceFiles list) => list.Of(coach.Student, office.Owner))).Single().Swings);
    }
}

public sealed class ImportOnSqlite(SqliteOffice office) : ImportTests(office), IClassFixture<SqliteOffice>;

public sealed class ImportOnPostgreSql(PostgreSqlOffice office) : ImportTests(office), IClassFixture<PostgreSqlOffice>;
