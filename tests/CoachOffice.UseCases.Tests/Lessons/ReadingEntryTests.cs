using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Lessons;

namespace CoachOffice.UseCases.Tests.Lessons;

public sealed class ReadingEntryTests
{
    private static readonly Measure Tilt = Of("impact-spine-tilt", "Spine tilt at impact", Unit.Degree, new Limits(-30, 60), "away from target");
    private static readonly Measure Shift = Of("downswing-head-shift", "Head shift", Unit.Centimetre, new Limits(-40, 40), "toward target");
    private static readonly Measure Spin = Of("spin-rate", "Spin rate", Unit.RevolutionPerMinute, new Limits(500, 12000), "faster");

    [Theory]
    [InlineData("14", "14")]
    [InlineData("14.5", "14.5")]
    [InlineData("14,5", "14.5")]
    [InlineData("-3", "-3")]
    [InlineData("\u22123", "-3")]
    [InlineData("14 15,5 13", "14 15.5 13")]
    [InlineData("14; 15.5;13", "14 15.5 13")]
    [InlineData("14, 15,5, 13", "14 15.5 13")]
    [InlineData(" 14\t15\r\n13 ", "14 15 13")]
    [InlineData("14 deg 15deg 13°", "14 15 13")]
    [InlineData("", "")]
    public void Numbers_are_read_as_people_type_them(string text, string expected) =>
        Assert.Equal(expected, string.Join(' ', ReadingEntry.Parse(text, Unit.Degree, Tilt, false).Value.Select(v => ShownUnits.Number(v.Value.Value))));

    [Theory]
    [InlineData(500, null)]
    [InlineData(501, "too-many-swings")]
    public void A_field_holds_as_many_swings_as_an_import_may_bring(int swings, string? refused) =>
        Assert.Equal(refused, ReadingEntry.Parse(string.Join(' ', Enumerable.Repeat("14", swings)), Unit.Degree, Tilt, false).Refusals.SingleOrDefault()?.Code);

    [Theory]
    [InlineData("14 - 15", "1:14 3:15")]
    [InlineData("- \u2013 13", "3:13")]
    [InlineData("14;-;-3", "1:14 3:-3")]
    [InlineData("14 -", "1:14")]
    [InlineData("-", "")]
    public void A_dash_stands_for_a_swing_that_was_not_read(string text, string expected) =>
        Assert.Equal(expected, string.Join(' ', ReadingEntry.Parse(text, Unit.Degree, Tilt, false).Value.Select(v => $"{v.Swing}:{ShownUnits.Number(v.Value.Value)}")));

    [Theory]
    [InlineData("NaN")]
    [InlineData("infinity")]
    [InlineData("1e5")]
    [InlineData("14..5")]
    [InlineData("14,5,6")]
    [InlineData("fourteen")]
    [InlineData("--3")]
    [InlineData("0x10")]
    [InlineData("99999999999")]
    public void What_is_no_number_is_refused_with_what_would_be_right(string text)
    {
        var refusal = ReadingEntry.Parse(text, Unit.Degree, Tilt, false).Refusals.Single();

        Assert.Contains(refusal.Code, (string[])["not-a-number", "unit-wrong"]);
        Assert.Equal("readings[impact-spine-tilt]", refusal.Field);
        Assert.Contains("write ", refusal.Sentence, StringComparison.Ordinal);
    }

    /// <summary>A line read from the ground on the target side at 102 degrees leans 12 away from the target, 112 leans 22 (common practice, no source).</summary>
    [Theory]
    [InlineData("102", 12)]
    [InlineData("112", 22)]
    [InlineData("90", 0)]
    [InlineData("85", -5)]
    public void As_read_from_the_ground_is_turned_into_a_lean(string text, double tilt) =>
        Assert.Equal(tilt, ReadingEntry.Parse(text, Unit.Degree, Tilt, true).Value.Single().Value.Value);

    [Fact]
    public void A_lean_of_102_asks_whether_it_was_read_from_the_ground()
    {
        var refusal = ReadingEntry.Parse("102", Unit.Degree, Tilt, false).Refusals.Single();

        Assert.Equal("outside-limits", refusal.Code);
        Assert.Contains("-30 to 60 deg", refusal.Sentence, StringComparison.Ordinal);
        Assert.Contains("read it from the ground", refusal.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shift_is_never_read_from_the_ground() =>
        Assert.Equal("as-read-not-here", ReadingEntry.Parse("102", Unit.Centimetre, Shift, true).Refusals.Single().Code);

    [Theory]
    [InlineData("2", "in", 5.08)]
    [InlineData("20 mm", "cm", 2)]
    [InlineData("1 in", "cm", 2.54)]
    public void Units_convert_exactly_within_their_kind(string text, string shown, double centimetres) =>
        Assert.Equal(centimetres, ReadingEntry.Parse(text, Unit.Find(shown)!, Shift, false).Value.Single().Value.Value, 9);

    [Fact]
    public void A_unit_of_another_kind_is_refused_with_the_right_ones()
    {
        var refusal = ReadingEntry.Parse("5 mph", Unit.Centimetre, Shift, false).Refusals.Single();

        Assert.Equal("unit-wrong", refusal.Code);
        Assert.Contains("cm, mm, in, m, yd, ft", refusal.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_thousand_with_a_comma_is_not_quietly_taken_for_two_and_a_half() =>
        Assert.Equal("outside-limits", ReadingEntry.Parse("2,500", Unit.RevolutionPerMinute, Spin, false).Refusals.Single().Code);

    [Fact]
    public void Every_wrong_value_is_named_at_once() =>
        Assert.Equal(2, ReadingEntry.Parse("70 14 -45", Unit.Degree, Tilt, false).Refusals.Count);

    private static Measure Of(string id, string name, Unit unit, Limits plausible, string positive) => new()
    {
        Id = MeasureId.From(id),
        Name = name,
        Unit = unit,
        View = View.FaceOn,
        Moment = Moment.Impact,
        Positive = positive,
        HowTo = "",
        Plausible = plausible,
        SetupError = 1,
        SwingError = 1,
        Instruments = [Instrument.Video],
        Row = 0,
    };
}
