using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Domain.Tests.Measuring;

public sealed class GradingContextTests
{
    [Theory]
    [InlineData(true, Instrument.Video, 60.0, true)]
    [InlineData(true, Instrument.Eye, 60.0, true)]
    [InlineData(true, Instrument.Sensor, 60.0, false)]
    [InlineData(true, Instrument.Video, 100.0, false)]
    [InlineData(true, Instrument.Video, null, false)]
    [InlineData(false, Instrument.Video, 60.0, false)]
    public void Slow_video_matters_where_impact_is_read_from_it(bool needsFastVideo, Instrument instrument, double? rate, bool slow) =>
        Assert.Equal(slow, GradingContext.IsSlowVideo(Lessons.Tilt with { NeedsFastVideo = needsFastVideo }, Lessons.Value(Lessons.Tilt, 20) with { Instrument = instrument, FrameRate = rate }));

    [Fact]
    public void Without_a_step_or_a_range_or_a_goal_there_is_nothing_to_hold_against()
    {
        var context = Of(Lessons.Adult);
        Assert.Equal(new HeldRange(null, null, false), context.Hold(Lessons.Tilt with { Step = null }));
        Assert.Equal(new HeldRange(null, .4, false), context.Hold(Lessons.Tempo));
        Assert.Equal(new HeldRange(null, 1.2, false), context.Hold(Lessons.Speed));
    }

    [Fact]
    public void A_goal_of_ones_own_is_the_low_edge_in_the_measures_unit() =>
        Assert.Equal(
            new HeldRange(new Limits(44.704, null), 1.2, true),
            Of(Lessons.Adult with { ClubSpeedGoal = new Quantity(100, Unit.MilePerHour) }).Hold(Lessons.Speed));

    [Fact]
    public void A_goal_of_speed_is_no_goal_for_anything_else()
    {
        var ball = Lessons.Speed with { Id = MeasureId.From("ball-speed") };
        var book = BookWith(new WantedRange { Measure = ball.Id, Club = Club.Driver, Limits = new Limits(null, null), FromGoal = true, Source = SourceMark.CommonPractice });
        var fast = Lessons.Adult with { ClubSpeedGoal = new Quantity(47, Unit.MetrePerSecond) };
        Assert.Null(new GradingContext(book, Lessons.Of(fast)).Hold(ball).Limits);
    }

    [Fact]
    public void Edges_and_step_grow_with_stature_and_an_open_end_stays_open()
    {
        var oneSided = BookWith(new WantedRange { Measure = Lessons.Head.Id, Club = Club.Driver, Limits = new Limits(null, 5), Source = SourceMark.CommonPractice });
        Assert.Equal(new HeldRange(new Limits(null, 4), 2.4, false), new GradingContext(oneSided, Lessons.Of(Lessons.Adult with { HeightCm = 140 })).Hold(Lessons.Head));
    }

    [Theory]
    [InlineData(1965, 70, 112)]
    [InlineData(1966, 78, 108)]
    public void An_age_may_move_either_edge(int birthYear, double low, double high)
    {
        RangeAdjustment[] rules =
        [
            new() { Measure = Lessons.Turn.Id, FromAge = 60, LowBy = -8, HighBy = 4, Source = SourceMark.CommonPractice },
            new() { Measure = Lessons.Head.Id, FromAge = 0, LowBy = -1, HighBy = 1, Source = SourceMark.CommonPractice },
        ];
        var book = Lessons.BookOf([Lessons.Turn], adjustments: rules);
        Assert.Equal(new Limits(low, high), new GradingContext(book, Lessons.Of(Lessons.Adult with { BirthYear = birthYear })).Hold(Lessons.Turn).Limits);
    }

    [Theory]
    [InlineData(2011, null, true, true)]
    [InlineData(2010, null, true, false)]
    [InlineData(2011, 150.0, true, false)]
    [InlineData(2011, null, false, false)]
    public void A_length_of_the_young_needs_their_height(int birthYear, double? height, bool scales, bool needs) =>
        Assert.Equal(needs, Of(Lessons.Adult with { BirthYear = birthYear, HeightCm = height }).NeedsHeight(Lessons.Head with { ScalesWithStature = scales }));

    [Fact]
    public void What_nobody_read_is_derived()
    {
        var context = new GradingContext(Lessons.Book, Lessons.Of(Lessons.Adult, Lessons.Value(Lessons.Head, 3)));
        Assert.Equal((false, true), (context.IsDerived(Lessons.Head.Id), context.IsDerived(Lessons.Drift.Id)));
    }

    private static GradingContext Of(StudentFacts student) => new(Lessons.Book, Lessons.Of(student));

    private static Rulebook BookWith(WantedRange range) => Lessons.BookOf([Lessons.Tilt], ranges: [range]);
}
