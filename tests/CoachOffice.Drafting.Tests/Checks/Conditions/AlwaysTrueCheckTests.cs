using CoachOffice.Drafting.Checks;

namespace CoachOffice.Drafting.Tests.Checks.Conditions;

public sealed class AlwaysTrueCheckTests
{
    [Theory]
    [InlineData("early measured", 1)]
    [InlineData("early not in range", 1)]
    [InlineData("early.low at least marked", 1)]
    [InlineData("early.low at least moderate", 2)]
    [InlineData("early below -3", 2)]
    [InlineData("early below -5", 1)]
    [InlineData("middle measured", 0)]
    [InlineData("middle not in range", 0)]
    public void A_condition_the_others_say_already_changes_nothing(string second, int found) =>
        Expect(found, $"when: [early.low, {second}]");

    [Theory]
    [InlineData("early.high", true)]
    [InlineData("early in range", true)]
    [InlineData("early.low at least marked", false)]
    [InlineData("late.low", false)]
    public void An_unless_that_the_rest_excludes_changes_nothing(string unless, bool found) =>
        Expect(found ? 1 : 0, "when: [early.low]", $"unless: [{unless}]");

    [Fact]
    public void An_unless_said_by_another_unless_changes_nothing() =>
        Expect(3, "when: [early.low]", "unless: [middle.out, middle.low, middle.high]");

    [Theory]
    [InlineData("early.high, late.low", true)]
    [InlineData("middle.low, late.low", false)]
    public void A_pattern_that_never_fires_beside_it_rules_nothing_out(string other, bool found)
    {
        var anomalies = new BookUnderCheck().Pattern("one", "10", "when: [early.low]", "unless: [pattern other]", "root: early.low")
            .Pattern("other", "20", $"when: [{other}]", "root: late.low").Find(AnomalyKind.AlwaysTrue);

        Assert.Equal(found ? 1 : 0, anomalies.Count);
    }

    [Theory]
    [InlineData(1, true)]
    [InlineData(-1, false)]
    public void A_bound_inside_the_range_says_no_more_than_the_edge(int bound, bool found)
    {
        var anomalies = new BookUnderCheck().Pattern("one", "10", $"when: [early below {bound}]", "root: early.low").Find(AnomalyKind.AlwaysTrue);

        Assert.Equal(found ? 1 : 0, anomalies.Count);
    }

    [Fact]
    public void What_counts_other_measures_is_left_alone() => Expect(0, "when: [early.low, at least 2 others in range]");

    private static void Expect(int found, params string[] lines)
    {
        var anomalies = new BookUnderCheck().Pattern("one", "10", [.. lines, "root: early.low"]).Find(AnomalyKind.AlwaysTrue);

        Assert.Equal(found, anomalies.Count);
        if (found > 0) Assert.Equal("early", Assert.Single(anomalies[0].Example!.Readings).Measure.Value);
    }
}
