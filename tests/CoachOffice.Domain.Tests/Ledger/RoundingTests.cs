using System.Globalization;
using CoachOffice.Domain.Ledger;

namespace CoachOffice.Domain.Tests.Ledger;

/// <summary>The summary table of java.math.RoundingMode (docs.oracle.com, Java SE 17 API), input in tenths.</summary>
public sealed class RoundingTests
{
    [Theory]
    [InlineData(55, 6, 5, 6, 5, 6, 5, 6)]
    [InlineData(25, 3, 2, 3, 2, 3, 2, 2)]
    [InlineData(16, 2, 1, 2, 1, 2, 2, 2)]
    [InlineData(11, 2, 1, 2, 1, 1, 1, 1)]
    [InlineData(10, 1, 1, 1, 1, 1, 1, 1)]
    [InlineData(-10, -1, -1, -1, -1, -1, -1, -1)]
    [InlineData(-11, -2, -1, -1, -2, -1, -1, -1)]
    [InlineData(-16, -2, -1, -1, -2, -2, -2, -2)]
    [InlineData(-25, -3, -2, -2, -3, -3, -2, -2)]
    [InlineData(-55, -6, -5, -5, -6, -6, -5, -6)]
    public void Rounds_as_the_published_table(int tenths, long up, long down, long ceiling, long floor, long halfUp, long halfDown, long halfEven)
    {
        Rounding[] rules = [Rounding.Up, Rounding.Down, Rounding.Ceiling, Rounding.Floor, Rounding.HalfUp, Rounding.HalfDown, Rounding.HalfEven];

        Assert.Equal([up, down, ceiling, floor, halfUp, halfDown, halfEven], rules.Select(rule => RoundedQuotient.Of(tenths, 10, rule)));
        Assert.Equal([up, down, ceiling, floor, halfUp, halfDown, halfEven], rules.Select(rule => RoundedQuotient.Of(-tenths, -10, rule)));
    }

    // Beyond what a double holds exactly: 2^53 + 1 halves.
    [Fact]
    public void Is_exact_where_binary_fractions_are_not()
    {
        Assert.Equal(4503599627370497, RoundedQuotient.Of(9007199254740993, 2, Rounding.HalfUp));
        Assert.Equal(4503599627370496, RoundedQuotient.Of(9007199254740993, 2, Rounding.HalfDown));
        Assert.Equal(long.MaxValue, RoundedQuotient.Of((Int128)long.MaxValue * 10_000, 10_000, Rounding.HalfEven));
        Assert.Throws<OverflowException>(() => RoundedQuotient.Of((Int128)long.MaxValue * 2, 1, Rounding.HalfUp));
    }

    // Computed values that tell the laws apart, in hundredths: 0.045 is 4.5 cents.
    [Theory]
    [InlineData("4.5", 5, 4, 4)]
    [InlineData("2.5", 3, 2, 2)]
    [InlineData("3.5", 4, 4, 3)]
    [InlineData("1.5", 2, 2, 1)]
    public void Halves_of_a_cent_go_three_ways(string cents, long halfUp, long halfEven, long halfDown)
    {
        var tenths = (long)(decimal.Parse(cents, CultureInfo.InvariantCulture) * 10);

        Assert.Equal((halfUp, halfEven, halfDown), (RoundedQuotient.Of(tenths, 10, Rounding.HalfUp), RoundedQuotient.Of(tenths, 10, Rounding.HalfEven), RoundedQuotient.Of(tenths, 10, Rounding.HalfDown)));
    }
}
