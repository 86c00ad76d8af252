using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Tests.Measuring;

public sealed class LimitsTests
{
    [Theory]
    [InlineData(20.0, 28.0, 20, true)]
    [InlineData(20.0, 28.0, 28, true)]
    [InlineData(20.0, 28.0, 19.999, false)]
    [InlineData(20.0, 28.0, 28.001, false)]
    [InlineData(null, 28.0, -1e9, true)]
    [InlineData(null, 28.0, 28.001, false)]
    [InlineData(20.0, null, 1e9, true)]
    [InlineData(20.0, null, 19.999, false)]
    [InlineData(null, null, 0, true)]
    public void Edges_are_inside_and_a_missing_end_is_open(double? low, double? high, double value, bool inside) => Assert.Equal(inside, new Limits(low, high).Contains(value));
}
