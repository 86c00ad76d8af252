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
