using CoachOffice.Drafting.Checks;

namespace CoachOffice.Drafting.Tests.Checks.Conditions;

public sealed class TwicePatternsCheckTests
{
    [Theory]
    [InlineData("when: [middle.low, early.low]", "explains: [middle.low]", AnomalySeverity.Refuse)]
    [InlineData("when: [early.low, middle.low]", "explains: [late.low]", AnomalySeverity.Warn)]
    public void Two_patterns_under_one_condition_are_said_twice(string when, string explains, AnomalySeverity severity)
    {
        var anomaly = Assert.Single(Two(when, explains).Find(AnomalyKind.SaidTwice));

        Assert.Equal(severity, anomaly.Severity);
        Assert.Equal(["one", "two"], anomaly.Entries.Select(e => e.Id));
        Assert.Equal(["early", "middle"], anomaly.Example!.Readings.Select(r => r.Measure.Value).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("when: [early.low, middle.low at least moderate]")]
    [InlineData("when: [early.low, middle.low, late.low]")]
    [InlineData("when: [early.low, middle.high]")]
    public void Another_condition_is_another_pattern(string when) => Assert.Empty(Two(when, "explains: [middle.low]").Find(AnomalyKind.SaidTwice));

    [Theory]
    [InlineData("20", "", true)]
    [InlineData("5", "", false)]
    [InlineData("20", "over: [one]", false)]
    public void A_narrow_pattern_behind_a_wide_one_is_never_heard(string precedence, string over, bool found)
    {
        string[] lines = ["when: [early.low at least moderate, middle.low, late.low]", "root: early.low", "explains: [middle.low]", .. over.Length > 0 ? [over] : Array.Empty<string>()];
        var anomalies = new BookUnderCheck().Pattern("one", "10", "when: [early.low, middle.low]", "root: early.low", "explains: [middle.low]").Pattern("two", precedence, lines).Find(AnomalyKind.InsideAnother);

        Assert.Equal(found ? 1 : 0, anomalies.Count);
        if (!found) return;
        Assert.Equal(["two", "one"], anomalies[0].Entries.Select(e => e.Id));
        Assert.Equal(3, anomalies[0].Example!.Readings.Count);
    }

    [Fact]
    public void A_narrow_pattern_that_explains_more_is_heard() =>
        Assert.Empty(new BookUnderCheck().Pattern("one", "10", "when: [early.low, middle.low]", "root: early.low", "explains: [middle.low]")
            .Pattern("two", "20", "when: [early.low at least moderate, middle.low, late.low]", "root: early.low", "explains: [middle.low, late.low]").Find(AnomalyKind.InsideAnother));

    [Fact]
    public void A_wide_pattern_that_stands_over_a_narrow_one_silences_it() =>
        Assert.Single(new BookUnderCheck().Pattern("one", "10", "when: [early.low, middle.low]", "root: early.low", "explains: [middle.low]", "over: [two]")
            .Pattern("two", "5", "when: [early.low at least moderate, middle.low, late.low]", "root: early.low", "explains: [middle.low]").Find(AnomalyKind.InsideAnother));

    [Theory]
    [InlineData("10", "strike.low", true)]
    [InlineData("11", "strike.low", false)]
    [InlineData("10", "strike.high", false)]
    public void Two_causes_of_one_finding_with_one_precedence_are_told_apart_by_the_alphabet_only(string precedence, string explained, bool found)
    {
        var anomalies = new BookUnderCheck().Pattern("one", "10", "when: [early.low, strike.low]", "root: early.low", "explains: [strike.low]")
            .Pattern("two", precedence, $"when: [middle.low, {explained}]", "root: middle.low", $"explains: [{explained}]").Find(AnomalyKind.Conflict);

        Assert.Equal(found ? 1 : 0, anomalies.Count);
        if (found) Assert.Equal(3, anomalies[0].Example!.Readings.Count);
    }

    private static BookUnderCheck Two(string when, string explains) =>
        new BookUnderCheck().Pattern("one", "10", "when: [early.low, middle.low]", "root: early.low", "explains: [middle.low]").Pattern("two", "20", when, "root: early.low", explains);
}
