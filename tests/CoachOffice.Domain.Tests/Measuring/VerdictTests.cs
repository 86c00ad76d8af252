using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.Domain.Tests.Measuring;

public sealed class VerdictTests
{
    private static readonly Limits Range = new(20, 28);

    [Theory]
    [InlineData(10, 19, Movement.MovedToward, Standing.NotYet)]
    [InlineData(10, 22, Movement.MovedToward, Standing.InRange)]
    [InlineData(10, 2, Movement.MovedAway, Standing.NotYet)]
    [InlineData(10, 30, Movement.MovedThrough, Standing.NotYet)]
    [InlineData(10, 12, Movement.NoChangeBeyondReadingError, Standing.NotYet)]
    [InlineData(24, 10, Movement.MovedAway, Standing.NotYet)]
    [InlineData(38, 27, Movement.MovedToward, Standing.InRange)]
    [InlineData(38, 16, Movement.MovedThrough, Standing.NotYet)]
    public void Five_swings_before_and_after(double before, double after, Movement movement, Standing standing)
    {
        var verdict = Verdicts.Judge(Lessons.Value(Lessons.Tilt, before, 5), Lessons.Value(Lessons.Tilt, after, 5), Lessons.Tilt, Range);
        Assert.Equal((movement, standing, after - before), (verdict.Movement, verdict.Standing, verdict.Change.Value));
    }

    [Fact]
    public void Too_few_swings_cannot_tell_and_says_how_many_more()
    {
        // Six degrees to the edge: 1.96 * sqrt(2 * 1.5^2 + 2.5^2 / 5 + 2.5^2 / n) is 6.7 for one swing and 5.8 for two.
        var verdict = Verdicts.Judge(Lessons.Value(Lessons.Tilt, 14, 5), Lessons.Value(Lessons.Tilt, 15), Lessons.Tilt, Range);
        Assert.Equal((Movement.CannotTell, 1), (verdict.Movement, verdict.MoreReadings));
    }

    [Fact]
    public void Where_the_camera_is_the_limit_no_number_of_swings_tells()
    {
        var verdict = Verdicts.Judge(Lessons.Value(Lessons.Tilt, 18), Lessons.Value(Lessons.Tilt, 19), Lessons.Tilt, Range);
        Assert.Equal((Movement.CannotTell, null), (verdict.Movement, verdict.MoreReadings));
    }

    [Fact]
    public void Two_single_readings_give_the_rule_of_two_point_seven_seven()
    {
        // Bland and Altman (1996), Weir (2005): 1.96 * root 2 = 2.77 times the error of one reading.
        var real = Verdicts.SmallestRealChange(Lessons.Value(Lessons.Tilt, 10), Lessons.Value(Lessons.Tilt, 10), Lessons.Tilt);
        Assert.Equal(2.7718585823 * Math.Sqrt((1.5 * 1.5) + (2.5 * 2.5)), real.Value, 9);
    }

    // Nothing errs here, so every change is real and only the edges decide.
    [Theory]
    [InlineData(19, 28, Movement.MovedToward, Standing.InRange)]
    [InlineData(19, 28.1, Movement.MovedThrough, Standing.NotYet)]
    [InlineData(29, 20, Movement.MovedToward, Standing.InRange)]
    [InlineData(29, 19.9, Movement.MovedThrough, Standing.NotYet)]
    [InlineData(20, 29, Movement.MovedAway, Standing.NotYet)]
    [InlineData(28, 19, Movement.MovedAway, Standing.NotYet)]
    [InlineData(22, 26, Movement.MovedAway, Standing.InRange)]
    [InlineData(14, 14, Movement.NoChangeBeyondReadingError, Standing.NotYet)]
    [InlineData(20, 20, Movement.NoChangeBeyondReadingError, Standing.InRange)]
    public void A_value_on_the_edge_has_arrived_and_has_not_gone_through(double before, double after, Movement movement, Standing standing)
    {
        var exact = Lessons.Tilt with { SetupError = 0, SwingError = 0 };
        var verdict = Verdicts.Judge(Lessons.Value(exact, before), Lessons.Value(exact, after), exact, Range);
        Assert.Equal((movement, standing, null), (verdict.Movement, verdict.Standing, verdict.MoreReadings));
    }

    [Theory]
    [InlineData(null, 28.0, 38, 30, Movement.MovedToward)]
    [InlineData(null, 28.0, 38, -38, Movement.MovedToward)]
    [InlineData(20.0, null, 10, 60, Movement.MovedToward)]
    [InlineData(20.0, null, 30, 10, Movement.MovedAway)]
    [InlineData(null, 28.0, 36, 35, Movement.NoChangeBeyondReadingError)]
    [InlineData(null, 28.0, 30, 31, Movement.CannotTell)]
    [InlineData(20.0, null, 12, 13, Movement.NoChangeBeyondReadingError)]
    [InlineData(20.0, null, 18, 17, Movement.CannotTell)]
    public void A_range_may_be_open_at_one_end(double? low, double? high, double before, double after, Movement movement) =>
        Assert.Equal(movement, Verdicts.Judge(Lessons.Value(Lessons.Tilt, before, 5), Lessons.Value(Lessons.Tilt, after, 5), Lessons.Tilt, new Limits(low, high)).Movement);

    [Fact]
    public void Values_are_compared_in_the_measures_unit()
    {
        var inches = new MeasuredValue { Measure = Lessons.Head.Id, Value = new Quantity(1, Unit.Inch), Readings = 5 };
        Assert.Equal(new Quantity(-9.46, Unit.Centimetre), Verdicts.Judge(Lessons.Value(Lessons.Head, 12, 5), inches, Lessons.Head, new Limits(-5, 5)).Change);
    }

    [Fact]
    public void Only_where_it_cannot_tell_more_swings_are_asked_for() =>
        Assert.Null(Verdicts.Judge(Lessons.Value(Lessons.Tilt, 10, 5), Lessons.Value(Lessons.Tilt, 22), Lessons.Tilt, Range).MoreReadings);

    [Fact]
    public void Never_on_the_day_of_the_lesson()
    {
        var day = new LocalDate(2026, 5, 4);
        Assert.False(Verdicts.MayJudge(day, day));
        Assert.True(Verdicts.MayJudge(day, day.PlusDays(1)));
    }

    [Theory]
    [InlineData(16.0, 1, 3)]
    [InlineData(17.0, 1, null)]
    public void A_borderline_value_asks_for_as_many_swings_as_settle_it(double value, int readings, int? more)
    {
        // sqrt(1.5^2 + 2.5^2 / 3) = 2.08 is not below half of 4, sqrt(1.5^2 + 2.5^2 / 4) = 1.95 is; half of 3 is the camera's own part.
        var asked = ReadingsNeeded.ToSettle(Lessons.Graded(Lessons.Tilt, value, readings), ReadingError.Of(Lessons.Tilt, Lessons.Value(Lessons.Tilt, value, readings)));
        Assert.Equal(more, asked);
    }
}
