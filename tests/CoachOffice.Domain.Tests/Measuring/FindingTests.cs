using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Tests.Measuring;

public sealed class FindingTests
{
    // Wanted 20 to 28, step 4, twelve swings.
    [Theory]
    [InlineData(24.0, Grade.InRange, 0, false, null)]
    [InlineData(19.9, Grade.Borderline, 0, false, "impact-spine-tilt.low")]
    [InlineData(17.0, Grade.Mild, 1, true, "impact-spine-tilt.low")]
    [InlineData(14.0, Grade.Moderate, 2, true, "impact-spine-tilt.low")]
    [InlineData(5.0, Grade.Marked, 3, true, "impact-spine-tilt.low")]
    [InlineData(31.0, Grade.Mild, 1, true, "impact-spine-tilt.high")]
    public void From_mild_on_a_finding_is_out_and_weighs_by_its_grade(double value, Grade grade, int weight, bool isOut, string? fault)
    {
        var finding = Lessons.Graded(Lessons.Tilt, value, readings: 12);
        Assert.Equal((grade, weight, isOut, fault), (finding.Grade, finding.Weight, finding.IsOut, finding.Fault?.ToString()));
    }

    [Fact]
    public void Without_a_range_there_is_no_fault()
    {
        var finding = Lessons.Graded(Lessons.Speed, 30);
        Assert.Equal((0, false, null), (finding.Weight, finding.IsOut, finding.Fault));
    }
}
