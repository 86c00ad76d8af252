using System.Text;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;

namespace CoachOffice.Domain.Tests.Plans.Drafts;

public sealed class DraftJsonTests
{
    [Fact]
    public void Two_spaces_line_feeds_and_a_last_one_no_mark()
    {
        var bytes = DraftJson.Write(Draft());
        Assert.Equal((byte)'{', bytes[0]);
        Assert.EndsWith("]\n}\n", Encoding.UTF8.GetString(bytes), StringComparison.Ordinal);
        Assert.StartsWith("{\n  \"rulebook\": {\n    \"name\": \"Büchlein \\\"für\\\" 😀\",\n", Encoding.UTF8.GetString(bytes), StringComparison.Ordinal);
        Assert.DoesNotContain((byte)'\r', bytes);
    }

    [Theory]
    [InlineData(14, "14")]
    [InlineData(-0.0, "0")]
    [InlineData(0.00001, "0.00001")]
    [InlineData(1e15, "1000000000000000")]
    [InlineData(46.9392, "46.9392")]
    public void A_value_is_written_as_given_without_an_exponent(double value, string written) => Assert.Contains($"\"value\": {written},", Json(value: value), StringComparison.Ordinal);

    [Theory]
    [InlineData(2.0816659994661326, "2.082")]
    [InlineData(0.0005, "0.001")]
    [InlineData(1.0005, "1.001")]
    [InlineData(2.5, "2.5")]
    public void Errors_are_rounded_to_three_decimals_half_away_from_zero(double error, string written) => Assert.Contains($"\"standardError\": {written},", Json(error: error), StringComparison.Ordinal);

    [Fact]
    public void A_one_sided_range_has_null() => Assert.Contains("\"range\": [\n        20,\n        null\n      ],", Json(), StringComparison.Ordinal);

    [Fact]
    public void It_reads_back_as_it_was_written()
    {
        var text = DraftJson.Text(Draft());
        Assert.Equal(text, DraftJson.Text(DraftJson.Read(text)));
        Assert.Equal("impact-spine-tilt.low", DraftJson.Read(text).Parked[0].Fault.ToString());
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{ \"rulebook\": 3 }")]
    public void Anything_else_is_a_defect(string text) => Assert.Throws<FormatException>(() => DraftJson.Read(text));

    private static string Json(double value = 14, double error = 1) => DraftJson.Text(Draft(value, error));

    private static Draft Draft(double value = 14, double error = 1) => new()
    {
        Rulebook = new DraftRulebook("Büchlein \"für\" 😀", "00"),
        Engine = "drafter/1",
        Input = "11",
        Findings =
        [
            new DraftFinding
            {
                Measure = "impact-spine-tilt", Side = Side.Low, Grade = Grade.Moderate, Value = value, Unit = "deg", StandardError = error, RangeLow = 20, OutsideBy = 6, ChanceOutside = 0.99805,
            },
        ],
        Causes = [],
        Focus = [],
        Parked = [new DraftParked(FaultId.Parse("impact-spine-tilt.low"), ParkedReason.TooSmall, null)],
        Stages = [],
        Withheld = [],
        MeasureNext = [],
        Strengths = [],
        Cautions = [],
        Trace = [new DraftTrace("order:key", ["a\tb"])],
    };
}
