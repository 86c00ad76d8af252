using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Tests.Measuring;

public sealed class FaultIdTests
{
    [Theory]
    [InlineData("impact-spine-tilt.low", "impact-spine-tilt", Side.Low)]
    [InlineData("impact-spine-tilt.high", "impact-spine-tilt", Side.High)]
    [InlineData("a.b.low", "a.b", Side.Low)]
    public void A_fault_is_a_measure_and_a_side(string text, string measure, Side side)
    {
        Assert.Equal(new FaultId(MeasureId.From(measure), side), FaultId.Find(text));
        Assert.Equal(text, FaultId.Parse(text).ToString());
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("impact-spine-tilt")]
    [InlineData("low")]
    [InlineData(".low")]
    [InlineData("impact-spine-tilt.")]
    [InlineData("impact-spine-tilt.none")]
    [InlineData("impact-spine-tilt.Low")]
    public void Anything_else_is_none(string? text)
    {
        Assert.Null(FaultId.Find(text));
        Assert.Throws<FormatException>(() => FaultId.Parse(text!));
    }

    [Fact]
    public void Faults_have_one_order_by_their_text()
    {
        var (first, second, same) = (FaultId.Parse("club-path.high"), FaultId.Parse("club-path.low"), FaultId.Parse("club-path.high"));
        Assert.Equal((true, false, false), (first < second, second < first, first < same));
        Assert.Equal((false, true, false), (first > second, second > first, first > same));
        Assert.Equal((true, false, true), (first <= second, second <= first, first <= same));
        Assert.Equal((false, true, true), (first >= second, second >= first, first >= same));
    }
}
