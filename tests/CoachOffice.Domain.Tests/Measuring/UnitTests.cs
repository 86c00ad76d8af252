using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Tests.Measuring;

public sealed class UnitTests
{
    // The international yard and pound (1959): 1 in = 25.4 mm, 1 ft = 304.8 mm, 1 yd = 914.4 mm, 1 mile = 1609.344 m.
    [Theory]
    [InlineData("deg", Dimension.Angle, 1)]
    [InlineData("mm", Dimension.Length, 1)]
    [InlineData("cm", Dimension.Length, 10)]
    [InlineData("m", Dimension.Length, 1000)]
    [InlineData("in", Dimension.Length, 25.4)]
    [InlineData("ft", Dimension.Length, 304.8)]
    [InlineData("yd", Dimension.Length, 914.4)]
    [InlineData("m/s", Dimension.Speed, 1)]
    [InlineData("mph", Dimension.Speed, 0.44704)]
    [InlineData("km/h", Dimension.Speed, 1 / 3.6)]
    [InlineData("ratio", Dimension.Ratio, 1)]
    [InlineData("%", Dimension.Share, 1)]
    [InlineData("rpm", Dimension.RotationRate, 1)]
    [InlineData("s", Dimension.Duration, 1)]
    public void Each_unit_is_found_by_its_symbol_with_its_factor(string symbol, Dimension dimension, double factor)
    {
        var unit = Unit.Find(symbol)!;
        Assert.Equal((symbol, dimension), (unit.ToString(), unit.Dimension));
        Assert.Equal(factor, unit.ToBase, 12);
    }

    [Fact]
    public void The_table_holds_fourteen_units_and_no_other_is_found()
    {
        Assert.Equal(14, Unit.All.Select(u => u.Symbol).Distinct().Count());
        Assert.Equal((null, null, null), (Unit.Find("furlong"), Unit.Find("CM"), Unit.Find(null)));
    }
}
