using CoachOffice.Domain.Bookings;

namespace CoachOffice.Domain.Tests.Bookings;

public sealed class MissedTests
{
    // Newcombe RG (1998) Two-sided confidence intervals for the single proportion, Stat Med 17:857-872, Table I, method 3; its four places from memory, the six recomputed.
    [Theory]
    [InlineData(81, 263, .255289, .366210)]
    [InlineData(15, 148, .062386, .160487)]
    [InlineData(0, 20, 0, .161125)]
    [InlineData(1, 29, .006113, .171755)]
    [InlineData(250, 533, .427050, .511480)]
    [InlineData(33, 45, .589612, .840351)]
    [InlineData(13, 16, .569911, .934084)]
    [InlineData(4, 20, .080658, .416017)]
    [InlineData(5, 5, .565518, 1)]
    public void The_interval_is_the_published_one(int count, int of, double low, double high)
    {
        var (from, until) = new Missed(count, of).Interval;
        Assert.Equal(low, from, 1e-6);
        Assert.Equal(high, until, 1e-6);
    }

    // By the formula of Katz et al. (1978), worked by hand: 10 of 100 against 20 of 100: ln .5 = -.693147, se = sqrt(.1 - .01 + .05 - .01) = .360555.
    [Fact]
    public void A_ratio_comes_with_its_interval()
    {
        var ratio = new Missed(10, 100).Against(new Missed(20, 100))!;
        Assert.Equal(.5, ratio.Value, 1e-9);
        Assert.Equal(.246641, ratio.Low, 1e-6);
        Assert.Equal(1.013620, ratio.High, 1e-6);
    }

    [Theory]
    [InlineData(0, 100, 5, 100)]
    [InlineData(5, 100, 0, 100)]
    [InlineData(1, 7, 5, 100)]
    [InlineData(5, 100, 1, 7)]
    public void Where_there_is_too_little_nothing_is_compared(int count, int of, int others, int ofOthers) => Assert.Null(new Missed(count, of).Against(new Missed(others, ofOthers)));

    [Fact]
    public void Of_none_nothing_is_known() => Assert.Equal((0.0, (0.0, 1.0), false), (new Missed(0, 0).Share, new Missed(0, 0).Interval, new Missed(0, 0).IsEnough));
}
