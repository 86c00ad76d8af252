using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Lessons.Sheets;
using CoachOffice.UseCases.Plans;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Lessons;

public abstract class SaveLessonTests(OfficeFixture fixture)
{
    private static readonly LessonHeading Heading = new(new LocalDate(2026, 3, 2), Club.Driver);

    [Fact]
    public async Task A_sheet_comes_back_as_it_was_typed_with_grades_and_last_times_values()
    {
        var office = fixture.Office;
        var student = await office.Register(AStudent.Named("Sheet", "Reader"));
        await Scene.LessonOf(office, student, new LocalDate(2026, 2, 20), "9 9 9");
        office.Time.Advance(TimeSpan.FromSeconds(1));
        var lesson = await Scene.LessonOf(office, student, new LocalDate(2026, 3, 2));

        var view = (await office.Do((LessonPage page) => page.Of(lesson, new SheetWish(office.Owner))))!;

        var field = view.Sheet.SelectMany(g => g.Fields).Single(f => f.Measure.Id.Value == Scene.HeadShift);
        Assert.Equal(("12 13 11", 240d, 9d, new LocalDate(2026, 2, 20)), (field.Text, field.FrameRate!.Value, field.LastTime!.Value, field.LastOn!.Value));
        Assert.Equal(new Limits(-5, 5), field.Range);
        Assert.Equal(Side.High, view.Findings.Single(f => f.Measure.Id.Value == Scene.HeadShift).Side);
        Assert.Equal(view.Sheet.Select(g => (g.View, g.Moment)), view.Sheet.Select(g => (g.View, g.Moment)).Distinct().OrderBy(g => g.View).ThenBy(g => g.Moment));
    }

    [Fact]
    public async Task A_sheet_with_faults_is_refused_with_all_of_them_and_nothing_is_saved_by_half()
    {
        var office = fixture.Office;
        var lesson = await Started(office);
        var form = new LessonForm
        {
            Heading = Heading,
            Entries = [Scene.Entry(Scene.HeadShift, "4"), Scene.Entry("impact-spine-tilt", "NaN"), Scene.Entry("head-shfit", "3"), Scene.Entry("address-spine-tilt", "200"), Scene.Entry("lag-angle", "90 cm")],
        };

        var refusals = await office.Refuses((SaveLesson save) => save.As(lesson, 1, form, office.Coach));

        Assert.Equal(["not-a-number", "measure-not-known", "outside-limits", "unit-wrong"], refusals.Select(r => r.Code));
        Assert.Equal("readings[impact-spine-tilt]", refusals[0].Field);
        Assert.Equal(0, await office.Read(db => db.Readings.CountAsync(r => r.LessonId == lesson)));
    }

    [Fact]
    public async Task The_same_measure_twice_is_refused()
    {
        var office = fixture.Office;
        var lesson = await Started(office);
        var form = new LessonForm { Heading = Heading, Entries = [Scene.Entry(Scene.HeadShift, "4"), Scene.Entry(Scene.HeadShift, "5")] };

        Assert.Equal("measure-twice", (await office.Refuses((SaveLesson save) => save.As(lesson, 1, form, office.Coach))).Single().Code);
    }

    [Fact]
    public async Task A_corrected_reading_is_withdrawn_and_never_overwritten()
    {
        var office = fixture.Office;
        var lesson = await Started(office);
        await office.Must((SaveLesson save) => save.As(lesson, 1, new LessonForm { Heading = Heading, Entries = [Scene.Entry(Scene.HeadShift, "4 5")] }, office.Coach));
        await office.Must((SaveLesson save) => save.As(lesson, 2, new LessonForm { Heading = Heading, Entries = [Scene.Entry(Scene.HeadShift, "4 6")] }, office.Coach));

        var readings = await office.Read(db => db.Readings.AsNoTracking().Where(r => r.LessonId == lesson).OrderBy(r => r.Value).ToListAsync());

        Assert.Equal([(4d, false), (5d, true), (6d, false)], readings.Select(r => (r.Value, r.WithdrawnAt is not null)));
    }

    [Fact]
    public async Task The_second_of_two_people_on_one_lesson_is_told_and_overwrites_nothing()
    {
        var office = fixture.Office;
        var lesson = await Started(office);
        var form = new LessonForm { Heading = Heading, Observations = "first" };
        office.Time.Advance(TimeSpan.FromMinutes(1));
        await office.Must((SaveLesson save) => save.As(lesson, 1, form, office.Owner));

        var refusals = await office.Refuses((SaveLesson save) => save.As(lesson, 1, form with { Observations = "second" }, office.Coach));

        Assert.Equal(Clash.Code, refusals.Single().Code);
        Assert.Contains("Olive Owner", refusals.Single().Sentence, StringComparison.Ordinal);
        Assert.Equal("first", (await office.Do((LessonPage page) => page.Of(lesson, new SheetWish(office.Owner))))!.Observations);
    }

    [Fact]
    public async Task A_lesson_lies_today_or_earlier_and_only_who_teaches_records_it()
    {
        var office = fixture.Office;
        var student = await office.Register(AStudent.Named("Day", "Tomorrow"));

        Assert.Equal("lesson-day", (await office.Refuses((StartLesson start) => start.For(student, new LessonHeading(new LocalDate(2031, 1, 1), Club.Iron), office.Coach))).Single().Code);
        Assert.Equal(NotAllowed.Code, (await office.Refuses((StartLesson start) => start.For(student, Heading, office.Desk))).Single().Code);
    }

    [Fact]
    public async Task Without_a_reading_there_is_nothing_to_draft_from()
    {
        var office = fixture.Office;
        var lesson = await Started(office);

        Assert.Equal("no-readings", (await office.Refuses((DraftPlan draft) => draft.For(lesson, office.Coach))).Single().Code);
    }

    [Fact]
    public async Task Readings_are_graded_while_they_are_typed_and_not_kept()
    {
        var office = fixture.Office;
        var student = await office.Register(AStudent.Named("Live", "Grade"));
        TakenReading[] taken = [new() { Measure = MeasureId.From(Scene.HeadShift), Value = new Quantity(12, Unit.Centimetre), Swing = 1, FrameRate = 240 }];

        var live = await office.Do((GradeReadings grade) => grade.Live(student, Club.Driver, taken));

        Assert.Equal((Grade.Moderate, Side.High), (live.Findings.Single().Grade, live.Findings.Single().Side));
        Assert.Contains("impact-spine-tilt", live.Next.Select(n => n.Measure));
        Assert.Empty(live.Apart);
    }

    private static async Task<LessonId> Started(TestOffice office)
    {
        var student = await office.Register(AStudent.Named("Lena", "Lesson"));
        return await office.Must((StartLesson start) => start.For(student, Heading, office.Coach));
    }
}

public sealed class SaveLessonOnSqlite(SqliteOffice office) : SaveLessonTests(office), IClassFixture<SqliteOffice>;

public sealed class SaveLessonOnPostgreSql(PostgreSqlOffice office) : SaveLessonTests(office), IClassFixture<PostgreSqlOffice>;
