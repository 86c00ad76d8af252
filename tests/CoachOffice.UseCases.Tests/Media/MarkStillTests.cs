using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Measuring.Landmarks;
using CoachOffice.Domain.Media;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Media;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Media;

public abstract class MarkStillTests(OfficeFixture fixture)
{
    private static readonly LessonHeading Heading = new(new LocalDate(2026, 3, 2), Club.Driver);

    [Theory]
    [InlineData(Hand.Right, false)]
    [InlineData(Hand.Left, false)]
    [InlineData(Hand.Right, true)]
    public async Task Stills_drawn_to_scale_say_what_they_were_drawn_with(Hand hand, bool mirrored)
    {
        var office = fixture.Office;
        var lesson = await ALesson(office, hand);
        var side = mirrored != (hand == Hand.Left) ? PictureSide.Left : PictureSide.Right;
        foreach (var figure in AStickFigure.Swing)
        {
            var drawn = new DrawnStill(figure, side);
            var still = await Add(office, lesson, drawn);
            // Not mirrored, the side follows the student's hand by itself.
            var said = mirrored ? side : (await See(office, lesson, still)).Still.Marks!.Toward;
            await office.Must((MarkStill mark) => mark.As(still, 1, Marked(drawn, said), office.Coach));

            var values = (await See(office, lesson, still)).Values;

            Assert.Equal(figure.Truth.Keys.Order(), values.Select(v => v.Measure.Id.Value).Order());
            Assert.All(values, v => Assert.Equal(figure.Truth[v.Measure.Id.Value], v.Reading.Value!.Value.Value, 1e-6));
            Assert.All(values, v => Assert.True(v.CanBePut && v.Reading.Click!.Value.Value > 0));
        }
    }

    [Fact]
    public async Task Values_go_into_the_sheet_as_readings_from_video_of_that_swing_and_push_out_only_their_own()
    {
        var office = fixture.Office;
        var lesson = await ALesson(office, Hand.Right);
        await office.Must((SaveLesson save) => save.As(lesson, 1, new LessonForm { Heading = Heading, Entries = [Entry("impact-spine-tilt", "12 13"), Entry("club-speed", "40")] }, office.Coach));
        var drawn = new DrawnStill(AStickFigure.At(View.FaceOn, Moment.Impact));
        var still = await Add(office, lesson, drawn);
        await office.Must((MarkStill mark) => mark.As(still, 1, Marked(drawn, PictureSide.Right), office.Coach));

        Assert.Equal(2, await office.Must((PutIntoSheet put) => put.From(new PutOrder(lesson, still, 2, 2, ["impact-spine-tilt", "impact-head-behind-ball", "downswing-pelvis-shift"]), office.Coach)));

        var readings = await office.Read(db => db.Readings.AsNoTracking().Where(r => r.LessonId == lesson && r.WithdrawnAt == null).OrderBy(r => r.Measure).ThenBy(r => r.Swing).ToListAsync());
        Assert.Equal(
            [("club-speed", 1, 40d, 240d), ("impact-head-behind-ball", 1, 21d, 240d), ("impact-spine-tilt", 1, 24d, 240d), ("impact-spine-tilt", 2, 13d, 240d)],
            readings.Select(r => (r.Measure.Value, r.Swing, r.Value, r.FrameRate ?? 0)));
        Assert.Equal(Instrument.Video, readings[1].Instrument);
        var take = await office.Read(db => db.Takes.SingleAsync(t => t.LessonId == lesson && t.View == View.FaceOn && t.Swing == 1));
        Assert.All(readings.Where(r => r.Swing == 1 && r.Instrument == Instrument.Video && r.Measure.Value != "club-speed"), r => Assert.Equal(take.Id, r.TakeId));
        Assert.Equal(take.Id, (await office.Read(db => db.MediaItems.AsNoTracking().SingleAsync(m => m.Id == still))).TakeId);
        Assert.True(await office.Read(db => db.AuditEntries.AnyAsync(a => a.SubjectId == lesson.Value && a.Action == "readings-from-still")));
        Assert.True(await office.Read(db => db.LessonInputs.AnyAsync(i => i.LessonId == lesson && i.Json.Contains("impact-head-behind-ball"))));
    }

    [Fact]
    public async Task A_lesson_or_still_that_changed_since_takes_no_value()
    {
        var office = fixture.Office;
        var (lesson, still, drawn) = await AMarkedStill(office);

        foreach (var order in new[] { new PutOrder(lesson, still, 7, 2, ["impact-spine-tilt"]), new PutOrder(lesson, still, 1, 1, ["impact-spine-tilt"]) })
            Assert.Equal(Clash.Code, (await office.Refuses((PutIntoSheet put) => put.From(order, office.Coach))).Single().Code);
        Assert.Equal("still-nothing-to-put", (await office.Refuses((PutIntoSheet put) => put.From(new PutOrder(lesson, still, 1, 2, ["lag-angle"]), office.Coach))).Single().Code);
        Assert.Equal(NotAllowed.Code, (await office.Refuses((PutIntoSheet put) => put.From(new PutOrder(lesson, still, 1, 2, ["impact-spine-tilt"]), office.Desk))).Single().Code);
        Assert.Equal(NotAllowed.Code, (await office.Refuses((MarkStill mark) => mark.As(still, 2, Marked(drawn, PictureSide.Right), office.Desk))).Single().Code);
        Assert.Equal(0, await office.Read(db => db.Readings.CountAsync(r => r.LessonId == lesson)));
    }

    [Fact]
    public async Task A_still_that_may_not_be_shown_is_neither_marked_nor_read()
    {
        var office = fixture.Office;
        var (lesson, still, drawn) = await AMarkedStill(office);
        var student = (await See(office, lesson, still)).Student.Id;
        await office.Must((GiveMediaConsent give) => give.For(student, new ConsentForm("Points Taker", Heading.HeldOn), office.Coach));
        await office.Must((WithdrawMediaConsent withdraw) => withdraw.Of(student, office.Coach));

        Assert.Equal("media-consent-withdrawn", (await office.Refuses((MarkStill mark) => mark.As(still, 2, Marked(drawn, PictureSide.Right), office.Coach))).Single().Code);
        Assert.Equal("media-consent-withdrawn", (await office.Refuses((PutIntoSheet put) => put.From(new PutOrder(lesson, still, 1, 2, ["impact-spine-tilt"]), office.Coach))).Single().Code);
    }

    [Fact]
    public async Task Adding_and_marking_a_still_leaves_the_sheet_somebody_has_open_alone()
    {
        var office = fixture.Office;
        var (lesson, _, _) = await AMarkedStill(office);

        await office.Must((SaveLesson save) => save.As(lesson, 1, new LessonForm { Heading = Heading, Entries = [Entry("impact-spine-tilt", "12")] }, office.Coach));
    }

    [Fact]
    public async Task The_second_of_two_people_who_mark_is_told_which_points_differ_and_overwrites_nothing()
    {
        var office = fixture.Office;
        var (lesson, still, drawn) = await AMarkedStill(office);
        var form = Marked(drawn, PictureSide.Right);
        var moved = form with { Marks = form.Marks with { Marks = [.. form.Marks.Marks.Select(m => m.Landmark == Landmark.HeadMiddle ? m with { At = new Pixel(100, 120) } : m)] } };

        var refusals = await office.Refuses((MarkStill mark) => mark.As(still, 1, moved, office.Owner));

        Assert.All(refusals, r => Assert.Equal(Clash.Code, r.Code));
        Assert.Contains(office.Coach.Name, refusals[0].Sentence, StringComparison.Ordinal);
        Assert.Equal("x[head-middle]", Assert.Single(refusals.Skip(1)).Field);
        Assert.Contains("yours is '100, 120'", refusals[1].Sentence, StringComparison.Ordinal);
        var kept = (await See(office, lesson, still)).Still;
        Assert.Equal((2, drawn.At(Landmark.HeadMiddle)), (kept.Version, kept.Marks!.At(Landmark.HeadMiddle)!.Value));
    }

    [Fact]
    public async Task Points_of_another_view_are_kept_while_it_is_not_asked_for_them()
    {
        var office = fixture.Office;
        var (lesson, still, drawn) = await AMarkedStill(office);
        var shaft = drawn.At(Landmark.ShaftHigh);
        var top = new StillForm(new StillShows(View.FaceOn, Moment.Top, 1), Marked(drawn, PictureSide.Right).Marks);
        await office.Must((MarkStill mark) => mark.As(still, 2, top, office.Coach));
        var withoutShaft = top with { Marks = top.Marks with { Marks = [.. top.Marks.Marks.Where(m => m.Landmark is not (Landmark.ShaftHigh or Landmark.HeadMiddle))] } };

        await office.Must((MarkStill mark) => mark.As(still, 3, withoutShaft, office.Coach));

        var marks = (await See(office, lesson, still)).Still.Marks!;
        // At the top nobody asks for the shaft, so it stays; the head was asked for and was taken away.
        Assert.Equal((shaft, null), (marks.At(Landmark.ShaftHigh)!.Value, marks.At(Landmark.HeadMiddle)));
    }

    [Fact]
    public async Task What_cannot_be_is_refused_all_at_once()
    {
        var office = fixture.Office;
        var (_, still, drawn) = await AMarkedStill(office);
        var good = Marked(drawn, PictureSide.Right).Marks;
        var wrong = good with { OffSquareDegrees = 80, KnownLengthCm = 2, Marks = [.. good.Marks.Where(m => m.Landmark is not (Landmark.Ball or Landmark.PlumbBottom)), new Mark(Landmark.Ball, new Pixel(-3, 5)), new Mark(Landmark.PlumbBottom, drawn.At(Landmark.PlumbTop))] };

        var refusals = await office.Refuses((MarkStill mark) => mark.As(still, 2, new StillForm(new StillShows(View.FaceOn, Moment.Impact, 1), wrong), office.Coach));
        var finish = await office.Refuses((MarkStill mark) => mark.As(still, 2, new StillForm(new StillShows(View.FaceOn, Moment.Finish, 1), good), office.Coach));

        Assert.Equal(["still-off-square", "still-known-length", "still-mark-outside", "still-plumb-short"], refusals.Select(r => r.Code));
        Assert.Equal("still-shows", finish.Single().Code);
    }

    [Fact]
    public async Task The_next_still_of_that_view_and_size_begins_with_the_guides_of_the_last()
    {
        var office = fixture.Office;
        var (lesson, _, _) = await AMarkedStill(office);

        var next = await Add(office, lesson, new DrawnStill(AStickFigure.At(View.FaceOn, Moment.Top)));
        var other = await Add(office, lesson, new DrawnStill(AStickFigure.At(View.DownTheLine, Moment.Address)));

        var marks = (await See(office, lesson, next)).Still.Marks!;
        Assert.Equal([Landmark.PlumbTop, Landmark.PlumbBottom, Landmark.LengthStart, Landmark.LengthEnd], marks.Marks.Select(m => m.Landmark));
        Assert.Equal((AStickFigure.KnownLengthCm, 2d), (marks.KnownLengthCm!.Value, marks.OffSquareDegrees));
        Assert.Empty((await See(office, lesson, other)).Still.Marks!.Marks);
    }

    private static async Task<LessonId> ALesson(TestOffice office, Hand hand)
    {
        var student = await office.Register(AStudent.Named("Points", "Taker") with { Hand = hand });
        return await office.Must((StartLesson start) => start.For(student, Heading, office.Coach));
    }

    private static async Task<(LessonId Lesson, MediaId Still, DrawnStill Drawn)> AMarkedStill(TestOffice office)
    {
        var lesson = await ALesson(office, Hand.Right);
        var drawn = new DrawnStill(AStickFigure.At(View.FaceOn, Moment.Impact));
        var still = await Add(office, lesson, drawn);
        await office.Must((MarkStill mark) => mark.As(still, 1, Marked(drawn, PictureSide.Right), office.Coach));
        return (lesson, still, drawn);
    }

    private static Task<MediaId> Add(TestOffice office, LessonId lesson, DrawnStill drawn) =>
        office.Must((AddStill add) => add.To(lesson, new StillShows(drawn.Figure.View, drawn.Figure.Moment, 1), new MemoryStream(drawn.Png()), office.Coach));

    private static StillForm Marked(DrawnStill drawn, PictureSide toward) => new(
        new StillShows(drawn.Figure.View, drawn.Figure.Moment, 1),
        new StillMarks { Toward = toward, OffSquareDegrees = 2, KnownLengthCm = AStickFigure.KnownLengthCm, Marks = [.. drawn.Figure.Points.Keys.Order().Select(l => new Mark(l, drawn.At(l)))] });

    private static async Task<StillView> See(TestOffice office, LessonId lesson, MediaId still) => (await office.Do((StillPage page) => page.Of(lesson, still)))!;

    private static MeasureEntry Entry(string measure, string text) => new() { Measure = measure, Text = text, FrameRate = "240" };
}

public sealed class MarkStillOnPostgreSql(PostgreSqlOffice office) : MarkStillTests(office), IClassFixture<PostgreSqlOffice>;

public sealed class MarkStillOnSqlite(SqliteOffice office) : MarkStillTests(office), IClassFixture<SqliteOffice>;
