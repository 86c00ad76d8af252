using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Tests.Measuring;

public sealed class SwingsApartTests
{
    // USP general chapter 1010, example of ten results with one apart: median 100, median absolute deviation 0.15, 95.7 lies 19.33 robust deviations away.
    private static readonly double[] Published = [100.3, 100.2, 100.1, 100.0, 100.0, 100.0, 99.9, 99.7, 99.5, 95.7];

    [Fact]
    public void The_distance_of_the_odd_result_is_the_published_one() => Assert.Equal(19.33, (100 - 95.7) / SwingsApart.Spread(Published), 5e-3);

    [Fact]
    public void Where_most_are_equal_there_is_no_spread() => Assert.Equal(0, SwingsApart.Spread([14, 14, 14, 20]));

    [Fact]
    public void The_published_odd_result_stands_apart_from_readings_as_fine_as_it() =>
        Assert.Equal([9], SwingsApart.Of(Published, Lessons.Tilt with { SwingError = .1 }));

    [Theory]
    [InlineData(new double[] { 14, 15, 40 }, new[] { 2 })]
    [InlineData(new double[] { 40, 14, 14 }, new[] { 0 })]
    [InlineData(new double[] { 14, 40 }, new int[0])]
    [InlineData(new double[] { 14, 14, 14.5, 14 }, new int[0])]
    [InlineData(new double[] { 2, 10, 18, 26 }, new int[0])]
    [InlineData(new double[] { 14, 14, 14, 22.75 }, new int[0])]
    [InlineData(new double[] { 14, 14, 14, 22.8 }, new[] { 3 })]
    public void A_swing_stands_apart_when_it_is_further_off_than_swings_scatter(double[] values, int[] apart) =>
        Assert.Equal(apart, SwingsApart.Of(values, Lessons.Tilt with { SwingError = 2.5 }));
}
