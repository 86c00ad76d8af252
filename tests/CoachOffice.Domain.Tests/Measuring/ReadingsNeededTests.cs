using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Tests.Measuring;

public sealed class ReadingsNeededTests
{
    // With no set-up error the standard error of n swings is swing / root n; 2 beyond the edge wants it below 1.
    [Theory]
    [InlineData(3.9, 1, 15)]
    [InlineData(4.0, 1, 16)]
    [InlineData(4.3, 1, 18)]
    [InlineData(4.4, 1, 19)]
    [InlineData(4.5, 1, null)]
    [InlineData(2.0, 4, 1)]
    [InlineData(2.0, 20, null)]
    public void Swings_are_asked_for_until_the_error_is_below_half_the_distance_and_never_beyond_twenty(double swing, int readings, int? more)
    {
        var finding = Lessons.Graded(Lessons.Tilt, 18, readings);
        Assert.Equal(more, ReadingsNeeded.ToSettle(finding, new ReadingError(Unit.Degree, 0, swing)));
    }

    // Before: any number of swings without an error of their own. After: 1.96 * swing * sqrt(1/n + 1/20) must fit into the distance.
    [Theory]
    [InlineData(20, 1, 19)]
    [InlineData(20, 12, 8)]
    [InlineData(10, 1, 9)]
    [InlineData(10, 9, 1)]
    public void After_a_change_swings_are_asked_for_until_it_would_show(int enough, int readings, int more)
    {
        var measure = Lessons.Tilt with { SetupError = 0, SwingError = 1 };
        var distance = Verdicts.SmallestRealChange(Lessons.Value(measure, 10, 20), Lessons.Value(measure, 10, enough), measure);
        Assert.Equal(more, ReadingsNeeded.ToJudge(Lessons.Value(measure, 10, 20), Lessons.Value(measure, 10, readings), measure, distance));
    }

    [Fact]
    public void Where_twenty_would_not_show_it_none_are_asked_for()
    {
        var measure = Lessons.Tilt with { SetupError = 0, SwingError = 1 };
        Assert.Null(ReadingsNeeded.ToJudge(Lessons.Value(measure, 10, 20), Lessons.Value(measure, 10), measure, new Quantity(.6, Unit.Degree)));
    }
}
