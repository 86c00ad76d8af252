using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Lessons.Sheets;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Lessons;

public abstract class SheetsAndTakesTests(OfficeFixture fixture)
{
    private static readonly LocalDate Day = new(2026, 3, 2);

    [Fact]
    public async Task Three_sheets_are_shipped_and_every_measure_on_them_is_in_the_rulebook()
    {
        var office = fixture.Office;
        var lesson = await Scene.LessonOf(office, await office.Register(AStudent.Named("Shipped", "Sheets")), Day);
        var everything = (await Open(office, lesson, office.Coach, "")).Sheet.SelectMany(g => g.Fields).Select(f => f.Measure.Id).ToHashSet();

        var sheets = await office.Do((ListSheets list) => list.For(office.Coach));

        Assert.True(sheets.Count(s => s.Id is null) == 3 && sheets.SelectMany(s => s.Measures).All(everything.Contains));
    }

    [Fact]
    public async Task A_sheet_shows_its_measures_and_never_hides_a_value()
    {
        var office = fixture.Office;
        var lesson = await Scene.LessonOf(office, await office.Register(AStudent.Named("Sheet", "Shown")), Day);

        var setUp = await Open(office, lesson, office.Coach, "set-up");

        var shown = setUp.Sheet.SelectMany(g => g.Fields).Select(f => f.Measure.Id.Value).ToList();
        Assert.Equal("set-up", setUp.SheetKey);
        Assert.Contains("stance-width", shown);
        Assert.Contains(Scene.HeadShift, shown);
        Assert.DoesNotContain("club-path", shown);
        Assert.Equal("", (await Open(office, lesson, office.Coach, "no-such-sheet")).SheetKey);
    }

    [Fact]
    public async Task The_sheet_a_lesson_was_read_by_is_the_coachs_next_lessons_as_well()
    {
        var office = await fixture.Another(opened: true);
        var student = await office.Register(AStudent.Named("Same", "Again"));
        var lesson = await office.Must((StartLesson start) => start.For(student, new LessonHeading(Day, Club.Driver), office.Coach));
        await office.Must((SaveLesson save) => save.As(lesson, 1, new LessonForm { Heading = new(Day, Club.Driver), Sheet = "set-up" }, office.Coach));
        office.Time.Advance(TimeSpan.FromMinutes(1));

        var next = await office.Must((StartLesson start) => start.For(student, new LessonHeading(Day, Club.Iron), office.Coach));

        Assert.Equal("set-up", (await Open(office, next, office.Coach, null)).SheetKey);
    }

    [Fact]
    public async Task An_own_sheet_is_kept_changed_and_taken_out_by_its_owner_alone()
    {
        var office = await fixture.Another(opened: true);
        var id = await office.Must((KeepSheet keep) => keep.As(new SheetForm { Name = " Wedges ", Measures = ["stance-width", "low-point", "low-point"] }, office.Coach));
        var mine = (await office.Do((ListSheets list) => list.For(office.Coach))).Single(s => s.Id == id);
        Assert.Equal(("Wedges", 2), (mine.Name, mine.Measures.Count));
        Assert.DoesNotContain(await office.Do((ListSheets list) => list.For(office.Owner)), s => s.Id == id);

        Assert.Equal("sheet-not-found", Code(await office.Refuses((KeepSheet keep) => keep.As(new SheetForm { Id = id, Version = 1, Name = "Mine", Measures = ["carry"] }, office.Owner))));
        await office.Must((KeepSheet keep) => keep.As(new SheetForm { Id = id, Version = mine.Version, Name = "Wedges", Measures = ["carry"] }, office.Coach));
        Assert.Equal(Clash.Code, Code(await office.Refuses((KeepSheet keep) => keep.As(new SheetForm { Id = id, Version = mine.Version, Name = "Late", Measures = ["carry"] }, office.Coach))));
        Assert.Equal("sheet-not-found", Code(await office.Refuses((DropSheet drop) => drop.Of(id, office.Owner))));
        await office.Must((DropSheet drop) => drop.Of(id, office.Coach));
        Assert.Equal("sheet-not-found", Code(await office.Refuses((DropSheet drop) => drop.Of(id, office.Coach))));
    }

    [Theory]
    [InlineData("", "carry", "sheet-name")]
    [InlineData("Name", "", "sheet-empty")]
    [InlineData("Name", "cary", "measure-not-known")]
    public async Task A_sheet_that_says_nothing_is_refused(string name, string measure, string code) =>
        Assert.Equal(code, Code(await fixture.Office.Refuses((KeepSheet keep) => keep.As(new SheetForm { Name = name, Measures = measure.Length > 0 ? [measure] : [] }, fixture.Office.Coach))));

    [Fact]
    public async Task The_desk_keeps_no_sheets() =>
        Assert.Equal(
            [NotAllowed.Code, NotAllowed.Code],
            [Code(await fixture.Office.Refuses((KeepSheet keep) => keep.As(new SheetForm { Name = "Desk", Measures = ["carry"] }, fixture.Office.Desk))), Code(await fixture.Office.Refuses((DropSheet drop) => drop.Of(Guid.Empty, fixture.Office.Desk)))]);

    [Fact]
    public async Task A_swing_that_was_not_read_is_a_gap_and_one_that_stands_apart_is_named()
    {
        var office = fixture.Office;
        var student = await office.Register(AStudent.Named("Gap", "Apart"));
        var lesson = await Scene.LessonOf(office, student, Day, "9 - 10 9,5 31");

        var view = await Open(office, lesson, office.Coach, null);

        var field = view.Sheet.SelectMany(g => g.Fields).Single(f => f.Measure.Id.Value == Scene.HeadShift);
        Assert.Equal("9 - 10 9.5 31", field.Text);
        Assert.Equal([(5, 31.0)], view.Apart[field.Measure.Id].Select(a => (a.Swing, a.Value.Value)));
        Assert.Equal(4, view.Findings.Single(f => f.Measure.Id == field.Measure.Id).Readings);
        Assert.Equal([(View.FaceOn, 1, 240d), (View.FaceOn, 2, 240d), (View.FaceOn, 3, 240d), (View.FaceOn, 4, 240d), (View.FaceOn, 5, 240d)], view.Takes.Select(t => (t.View, t.Swing, t.FrameRate!.Value)));
    }

    [Fact]
    public async Task A_take_shows_what_was_read_from_it_and_a_slower_video_grades_the_lesson_anew()
    {
        var office = fixture.Office;
        var student = await office.Register(AStudent.Named("Slow", "Video"));
        var lesson = await Scene.LessonOf(office, student, Day, "12 13");
        var take = (await Open(office, lesson, office.Coach, null)).Takes.Single(t => t.Swing == 1);

        await office.Must((SetFrameRate set) => set.Of(lesson, take.Id, "60", office.Coach));

        var view = (await office.Do((TakePage page) => page.Of(lesson, take.Id)))!;
        Assert.Equal((60d, 1, "Slow Video", 3), (view.FrameRate, view.Swing, view.StudentName, view.Version));
        Assert.Equal(["address-spine-tilt", Scene.HeadShift, "impact-spine-tilt"], view.Readings.Select(r => r.Measure.Id.Value).Order(StringComparer.Ordinal));
        var tilt = (await Open(office, lesson, office.Coach, null)).Findings.Single(f => f.Measure.Id.Value == "impact-spine-tilt");
        Assert.Equal(Grade.Borderline, tilt.Grade);
        var input = await office.Read(db => db.LessonInputs.SingleAsync(i => i.LessonId == lesson));
        Assert.Contains("\"frameRate\":60", input.Json, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("5", "frame-rate")]
    [InlineData("fast", "frame-rate")]
    public async Task A_frame_rate_no_camera_has_is_refused(string typed, string code)
    {
        var office = fixture.Office;
        var lesson = await Scene.LessonOf(office, await office.Register(AStudent.Named("Bad", "Rate")), Day);
        var take = (await Open(office, lesson, office.Coach, null)).Takes[0];

        Assert.Equal(code, Code(await office.Refuses((SetFrameRate set) => set.Of(lesson, take.Id, typed, office.Coach))));
        Assert.Equal("take-not-found", Code(await office.Refuses((SetFrameRate set) => set.Of(lesson, TakeId.From(lesson.Value), "240", office.Coach))));
        Assert.Equal(NotAllowed.Code, Code(await office.Refuses((SetFrameRate set) => set.Of(lesson, take.Id, "240", office.Desk))));
        Assert.Null(await office.Do((TakePage page) => page.Of(LessonId.From(take.Id.Value), take.Id)));
    }

    private static async Task<LessonView> Open(TestOffice office, LessonId lesson, Actor actor, string? sheet) =>
        (await office.Do((LessonPage page) => page.Of(lesson, new SheetWish(actor) { Key = sheet })))!;

    private static string Code(IReadOnlyList<Refusal> refusals) => refusals.Single().Code;
}

public sealed class SheetsAndTakesOnSqlite(SqliteOffice office) : SheetsAndTakesTests(office), IClassFixture<SqliteOffice>;

public sealed class SheetsAndTakesOnPostgreSql(PostgreSqlOffice office) : SheetsAndTakesTests(office), IClassFixture<PostgreSqlOffice>;
