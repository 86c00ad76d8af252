using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Tests.Measuring;

public sealed class QuantityTests
{
    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void A_quantity_is_a_finite_number(double value) => Assert.Throws<ArgumentOutOfRangeException>(() => new Quantity(value, Unit.Degree));

    [Theory]
    [InlineData("cm", "m/s")]
    [InlineData("deg", "%")]
    [InlineData("s", "rpm")]
    public void Only_units_of_one_kind_convert(string from, string to) => Assert.Throws<ArgumentException>(() => new Quantity(1, Unit.Find(from)!).In(Unit.Find(to)!));

    [Fact]
    public void In_its_own_unit_nothing_is_rounded()
    {
        const double Long = 45.000000000000007;
        Assert.Equal(Long, new Quantity(Long, Unit.Centimetre).In(Unit.Centimetre).Value);
    }

    [Theory]
    [InlineData(162, "km/h", "m/s", 45)]
    [InlineData(0, "in", "cm", 0)]
    [InlineData(-12.1, "in", "cm", -30.734)]
    [InlineData(1e12, "cm", "mm", 1e13)]
    [InlineData(1e300, "m", "cm", 1e302)]
    [InlineData(1e-300, "cm", "mm", 1e-299)]
    [InlineData(3e-10, "in", "mm", 76.2e-10)]
    public void A_conversion_has_no_hair_on_it_and_no_size_is_too_large(double value, string from, string to, double expected) =>
        Assert.Equal(expected, new Quantity(value, Unit.Find(from)!).In(Unit.Find(to)!).Value, Math.Abs(expected) * 1e-15);

    [Fact]
    public void It_is_written_as_a_number_and_a_unit() => Assert.Equal("30.734 cm", new Quantity(30.734, Unit.Centimetre).ToString());
}
