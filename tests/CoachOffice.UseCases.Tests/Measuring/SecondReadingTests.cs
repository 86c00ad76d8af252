using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Lessons.Sheets;
using CoachOffice.UseCases.Measuring.Again;
using CoachOffice.UseCases.Measuring.Sure;
using CoachOffice.UseCases.Rulebook;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Measuring;

public abstract class SecondReadingTests(OfficeFixture fixture)
{
    private const string Tilt = "impact-spine-tilt";

    [Fact]
    public async Task A_take_read_again_tells_the_error_of_marking_and_changes_no_lesson()
    {
        var office = await fixture.Another(opened: true);
        var first = await Asked(office, "12", office.Owner);
        var second = await Asked(office, "20", office.Owner);

        var view = (await office.Do((SecondReadingPage page) => page.Of(first)))!;
        Assert.Equal(["address-spine-tilt", Scene.HeadShift, Tilt], view.Fields.Select(f => f.Measure.Id.Value).Order(StringComparer.Ordinal));
        Assert.Equal(1, await office.Must((RecordSecondReading record) => record.As(first, 1, [Scene.Entry(Tilt, "15")], office.Owner)));
        Assert.Equal(1, await office.Must((RecordSecondReading record) => record.As(second, 1, [Scene.Entry(Tilt, "19")], office.Coach)));

        var sure = await Of(office, Tilt);
        var study = Assert.Single(sure.Twice);

        // Differences 3 and -1: root of (9 + 1) / 4, the within-subject standard deviation of duplicates (Bland and Altman 1996).
        Assert.Equal(Math.Sqrt(2.5), study.Error, 9);
        Assert.Equal((2, 1, 1.0), (study.Pairs, study.BySameReader, study.Bias));
        Assert.Null(study.Correlation);
        Assert.Empty(await office.Do((ListSecondReadings list) => list.Waiting()));
        Assert.Equal(6, await office.Read(db => db.Readings.CountAsync(r => r.WithdrawnAt == null)));
    }

    [Fact]
    public async Task Asked_twice_is_one_request_and_read_twice_is_one_reading()
    {
        var office = await fixture.Another(opened: true);
        var (lesson, take) = await Read(office, "12");
        var id = await office.Must((AskSecondReading ask) => ask.Of(lesson, take, office.Coach));

        Assert.Equal(id, await office.Must((AskSecondReading ask) => ask.Of(lesson, take, office.Owner)));
        await office.Must((RecordSecondReading record) => record.As(id, 1, [Scene.Entry(Tilt, "13")], office.Coach));

        Assert.Equal(Clash.Code, Code(await office.Refuses((RecordSecondReading record) => record.As(id, 1, [Scene.Entry(Tilt, "14")], office.Coach))));
        Assert.Null(await office.Do((SecondReadingPage page) => page.Of(id)));
    }

    [Theory]
    [InlineData("", "second-reading-empty")]
    [InlineData("14 15", "one-value")]
    [InlineData("102", "outside-limits")]
    public async Task A_second_reading_that_says_nothing_or_cannot_be_is_refused(string typed, string code)
    {
        var office = fixture.Office;
        var id = await Asked(office, "12", office.Coach);

        Assert.Equal(code, Code(await office.Refuses((RecordSecondReading record) => record.As(id, 1, [Scene.Entry(Tilt, typed)], office.Coach))));
    }

    [Fact]
    public async Task Only_who_teaches_asks_reads_and_proposes()
    {
        var office = fixture.Office;
        var (lesson, take) = await Read(office, "12");
        var id = await office.Must((AskSecondReading ask) => ask.Of(lesson, take, office.Coach));

        Assert.Equal(NotAllowed.Code, Code(await office.Refuses((AskSecondReading ask) => ask.Of(lesson, take, office.Desk))));
        Assert.Equal(NotAllowed.Code, Code(await office.Refuses((RecordSecondReading record) => record.As(id, 1, [Scene.Entry(Tilt, "13")], office.Desk))));
        Assert.Equal(NotAllowed.Code, Code(await office.Refuses((ProposeOwnScatter propose) => propose.Of(MeasureId.From(Tilt), office.Desk))));
        Assert.Equal("take-not-found", Code(await office.Refuses((AskSecondReading ask) => ask.Of(LessonId.From(id), take, office.Coach))));
        Assert.Equal("second-reading-not-found", Code(await office.Refuses((RecordSecondReading record) => record.As(Guid.Empty, 1, [], office.Coach))));
    }

    [Fact]
    public async Task Nothing_read_is_nothing_to_read_again()
    {
        var office = fixture.Office;
        var (lesson, take) = await Read(office, "12");
        await office.Must((SaveLesson save) => save.As(lesson, 2, new LessonForm { Heading = new(new LocalDate(2026, 3, 2), Club.Driver) }, office.Coach));

        Assert.Equal("take-not-read", Code(await office.Refuses((AskSecondReading ask) => ask.Of(lesson, take, office.Coach))));
    }

    [Fact]
    public async Task Ten_pairs_of_swings_may_take_the_place_of_the_rulebooks_scatter_and_fewer_may_not()
    {
        var office = await fixture.Another(opened: true);
        var student = await office.Register(AStudent.Named("Many", "Swings"));
        for (var day = 1; day <= 4; day++) await Tilted(office, student, day, "12 14 16");
        Assert.Equal("too-few-pairs", Code(await office.Refuses((ProposeOwnScatter propose) => propose.Of(MeasureId.From(Tilt), office.Coach))));
        Assert.Null((await Of(office, Tilt)).OwnScatter);
        await Tilted(office, student, 5, "20 22 24");

        var sure = await Of(office, Tilt);

        // Three swings 2 degrees apart have a variance of 4, in each lesson.
        Assert.Equal((5, 10, 2.0), (sure.Swings[0].Lessons, sure.Swings[0].Pairs, Math.Round(sure.Swings[0].Scatter, 9)));
        Assert.Equal(2.0, sure.OwnScatter!.Value.Value);
        var kept = await office.Must((ProposeOwnScatter propose) => propose.Of(MeasureId.From(Tilt), office.Coach));
        Assert.True(kept.IsKept);
        await office.Must((PutInForce put) => put.By("Our own scatter from ten pairs", office.Coach));
        sure = await Of(office, Tilt);
        Assert.Equal((1.5, 2.0), (sure.Measure.SetupError, sure.Measure.SwingError));
    }

    [Fact]
    public async Task What_a_change_needs_to_show_follows_the_law_of_retests()
    {
        var sure = await Of(fixture.Office, Tilt);

        // 1.96 times the root of 2 setup squared and two means' swing part (domain law; Weir 2005 for one reading each).
        Assert.Equal(1.96 * Math.Sqrt((2 * 1.5 * 1.5) + (2 * 2.5 * 2.5)), sure.Visible(1).Value, 9);
        Assert.Equal(Math.Sqrt((1.5 * 1.5) + (2.5 * 2.5)), sure.ErrorOfOne, 9);
        Assert.Null(sure.SwingsToSeeAStep);

        // 2 * 2.2^2 over (1.4 / 1.96)^2 less 2 * 0.3^2, rounded up.
        Assert.Equal(30, (await Of(fixture.Office, "club-path")).SwingsToSeeAStep);
    }

    private static async Task<SureMeasure> Of(TestOffice office, string measure) => (await office.Do((ReadHowSure read) => read.Now())).Single(s => s.Measure.Id.Value == measure);

    private static async Task<Guid> Asked(TestOffice office, string tilt, Actor by)
    {
        var (lesson, take) = await Read(office, tilt);
        return await office.Must((AskSecondReading ask) => ask.Of(lesson, take, by));
    }

    private static async Task<(LessonId Lesson, TakeId Take)> Read(TestOffice office, string tilt)
    {
        var student = await office.Register(AStudent.Named("Read", "Twice"));
        var lesson = await office.Must((StartLesson start) => start.For(student, new LessonHeading(new LocalDate(2026, 3, 2), Club.Driver), office.Coach));
        var form = new LessonForm { Heading = new(new LocalDate(2026, 3, 2), Club.Driver), Entries = [Scene.Entry(Tilt, tilt), Scene.Entry("address-spine-tilt", "8"), Scene.Entry(Scene.HeadShift, "9")] };
        await office.Must((SaveLesson save) => save.As(lesson, 1, form, office.Coach));
        return (lesson, (await office.Do((LessonPage page) => page.Of(lesson, new SheetWish(office.Coach))))!.Takes.Single().Id);
    }

    private static async Task Tilted(TestOffice office, Domain.Students.StudentId student, int day, string tilts)
    {
        var heading = new LessonHeading(new LocalDate(2026, 2, day), Club.Driver);
        var lesson = await office.Must((StartLesson start) => start.For(student, heading, office.Coach));
        await office.Must((SaveLesson save) => save.As(lesson, 1, new LessonForm { Heading = heading, Entries = [Scene.Entry(Tilt, tilts)] }, office.Coach));
    }

    private static string Code(IReadOnlyList<Refusal> refusals) => refusals.Single().Code;
}

public sealed class SecondReadingOnSqlite(SqliteOffice office) : SecondReadingTests(office), IClassFixture<SqliteOffice>;

public sealed class SecondReadingOnPostgreSql(PostgreSqlOffice office) : SecondReadingTests(office), IClassFixture<PostgreSqlOffice>;
