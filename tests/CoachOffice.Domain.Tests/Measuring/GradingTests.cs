using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using CsCheck;

namespace CoachOffice.Domain.Tests.Measuring;

public sealed class GradingTests
{
    [Fact]
    public void Fourteen_degrees_over_three_swings_is_moderate()
    {
        // The worked figures of the draft's contract: se 2.082, six beyond the edge, chance .998.
        var finding = Lessons.Graded(Lessons.Tilt, 14, readings: 3);
        Assert.Equal((Grade.Moderate, Side.Low, 6.0), (finding.Grade, finding.Side, finding.OutsideBy));
        Assert.Equal(2.082, finding.StandardError, 3);
        Assert.Equal(0.998, finding.ChanceOutside, 4);
    }

    [Theory]
    [InlineData(20.0, Grade.InRange)]
    [InlineData(28.0, Grade.InRange)]
    [InlineData(19.9, Grade.Borderline)]
    [InlineData(17.0, Grade.Mild)]
    [InlineData(16.0, Grade.Mild)]
    [InlineData(15.9, Grade.Moderate)]
    [InlineData(10.0, Grade.Moderate)]
    [InlineData(9.9, Grade.Marked)]
    [InlineData(32.1, Grade.Moderate)]
    public void Edges_are_inside_and_steps_decide(double value, Grade grade) => Assert.Equal(grade, Lessons.Graded(Lessons.Tilt, value, readings: 12).Grade);

    [Fact]
    public void More_swings_turn_an_edge_case_into_a_finding()
    {
        Assert.Equal(Grade.Borderline, Lessons.Graded(Lessons.Tilt, 17, readings: 1).Grade);
        Assert.Equal(Grade.Mild, Lessons.Graded(Lessons.Tilt, 17, readings: 5).Grade);
    }

    [Fact]
    public void Distances_are_compared_after_rounding_to_a_billionth() =>
        Assert.Equal(Grade.Mild, Lessons.Graded(Lessons.Tilt, 16 - 1e-11, readings: 12).Grade);

    [Fact]
    public void An_eye_errs_twice_as_much()
    {
        var eye = Lessons.Value(Lessons.Tilt, 14) with { Instrument = Instrument.Eye };
        Assert.Equal(2 * Lessons.Graded(Lessons.Tilt, 14).StandardError, Lessons.Graded(Lessons.Adult, eye).StandardError, 12);
    }

    [Theory]
    [InlineData(60.0, Grade.Borderline)]
    [InlineData(99.9, Grade.Borderline)]
    [InlineData(100.0, Grade.Marked)]
    [InlineData(null, Grade.Marked)]
    public void Slow_video_of_impact_is_never_more_than_borderline(double? frameRate, Grade grade) =>
        Assert.Equal(grade, Lessons.Graded(Lessons.Adult, Lessons.Value(Lessons.Tilt, 5) with { FrameRate = frameRate }).Grade);

    [Fact]
    public void Lengths_grow_with_stature()
    {
        var tall = Lessons.Graded(Lessons.Adult with { HeightCm = 210 }, Lessons.Value(Lessons.Head, 6, 4));
        Assert.Equal((new Limits(-6, 6), 3.6, Grade.InRange), (tall.Range, tall.Step, tall.Grade));
        Assert.Equal(new Limits(20, 28), Lessons.Graded(Lessons.Adult with { HeightCm = 210 }, Lessons.Value(Lessons.Tilt, 24)).Range);
    }

    [Theory]
    [InlineData(2010, null, Grade.Marked)]
    [InlineData(2011, null, Grade.Borderline)]
    [InlineData(2011, 150.0, Grade.Marked)]
    public void Under_fifteen_a_length_needs_a_height(int birthYear, double? height, Grade grade) =>
        Assert.Equal(grade, Lessons.Graded(Lessons.Adult with { BirthYear = birthYear, HeightCm = height }, Lessons.Value(Lessons.Head, 15, 4)).Grade);

    [Theory]
    [InlineData(1965, 70.0)]
    [InlineData(1966, 78.0)]
    public void From_sixty_the_shoulder_turn_may_be_eight_less(int birthYear, double low) =>
        Assert.Equal(low, Lessons.Graded(Lessons.Adult with { BirthYear = birthYear }, Lessons.Value(Lessons.Turn, 80)).Range!.Low);

    [Theory]
    [InlineData(47.0, Grade.InRange)]
    [InlineData(46.0, Grade.Borderline)]
    [InlineData(45.6, Grade.Borderline)]
    [InlineData(45.3, Grade.Moderate)]
    public void Speed_is_a_finding_when_short_of_the_goal_by_more_than_two_errors(double speed, Grade grade)
    {
        var fast = Lessons.Adult with { ClubSpeedGoal = new Quantity(47, Unit.MetrePerSecond) };
        Assert.Equal(grade, Lessons.Graded(fast, Lessons.Value(Lessons.Speed, speed)).Grade);
    }

    [Fact]
    public void Without_a_goal_speed_has_no_range()
    {
        var finding = Lessons.Graded(Lessons.Speed, 30);
        Assert.Equal((Grade.NoRange, Side.None, null), (finding.Grade, finding.Side, finding.Range));
    }

    [Theory]
    [InlineData(24, 12, true)]
    [InlineData(20, 12, false)]
    [InlineData(28, 12, false)]
    [InlineData(21, 12, false)]
    [InlineData(21.2, 12, true)]
    [InlineData(14, 12, false)]
    public void Clearly_in_range_is_a_strength(double value, int readings, bool strength)
    {
        // One standard error is 1.66 degrees: a value 1.12 inside the edge lies outside with a chance of a quarter.
        Assert.Equal(strength, Grading.IsStrength(Lessons.Graded(Lessons.Tilt, value, readings)));
    }

    [Theory]
    [InlineData(24, Grade.InRange, 0)]
    [InlineData(20, Grade.InRange, 0)]
    [InlineData(19, Grade.Mild, 1)]
    public void Without_any_error_a_value_is_inside_or_outside_for_certain(double value, Grade grade, double chance)
    {
        var exact = Lessons.Tilt with { SetupError = 0, SwingError = 0 };
        var finding = Grading.Grade(exact, Lessons.Value(exact, value), new GradingContext(Lessons.Book, Lessons.Of(Lessons.Adult)));
        Assert.Equal((grade, chance), (finding.Grade, finding.ChanceOutside));
    }

    [Theory]
    [InlineData(20, .5)]
    [InlineData(28, .5)]
    [InlineData(24, .0160)]
    [InlineData(31, .9644)]
    public void Either_edge_may_be_the_one_that_is_crossed(double value, double chance)
    {
        // Own arithmetic with the normal distribution and one standard error of 1.6646; both tails count in the middle.
        Assert.Equal(chance, Lessons.Graded(Lessons.Tilt, value, readings: 12).ChanceOutside, 3);
    }

    [Fact]
    public void Beyond_the_high_edge_the_side_is_high() =>
        Assert.Equal((Side.High, 6.0), Lessons.Graded(Lessons.Tilt, 34, readings: 3) is { } f ? (f.Side, f.OutsideBy) : default);

    [Fact]
    public void Head_drift_follows_from_its_two_halves_with_both_errors()
    {
        var findings = LessonGrading.Grade(Lessons.Book, Lessons.Of(Lessons.Adult, Lessons.Value(Lessons.Head, 7, 3), Lessons.Value(Lessons.HeadBack, -3, 5)));
        var drift = findings.Single(f => f.Measure.Id == Lessons.Drift.Id);
        Assert.Equal((4.0, true, 3), (drift.Value.Value, drift.IsDerived, drift.Readings));
        Assert.Equal(Math.Sqrt((2 * .8 * .8) + (2 * 1.8 * 1.8 / 3)), drift.StandardError, 12);
    }

    [Fact]
    public void A_tempo_from_slow_video_errs_more()
    {
        // Own arithmetic: R 3, D .27, B .81, f 30: 3/30 * sqrt((1/.81^2 + (1/.81 + 1/.27)^2 + 1/.27^2)/12) = .1819, doubled .3638.
        var error = ReadingError.Of(Lessons.Tempo, Lessons.Value(Lessons.Tempo, 3) with { FrameRate = 30 });
        Assert.Equal(Math.Sqrt((.1 * .1) + (.3638 * .3638)), error.Setup, 3);
        Assert.Equal(.1, ReadingError.Of(Lessons.Tempo, Lessons.Value(Lessons.Tempo, 3)).Setup, 12);
    }

    [Fact]
    public void A_value_further_out_never_grades_milder() =>
        Gen.Select(Gen.Double[-20, 50], Gen.Double[-20, 50], Gen.Int[1, 12]).Sample((a, b, n) =>
        {
            var (first, second) = (Lessons.Graded(Lessons.Tilt, a, n), Lessons.Graded(Lessons.Tilt, b, n));
            return first.OutsideBy > second.OutsideBy || first.Grade <= second.Grade;
        });
}
