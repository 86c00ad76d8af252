using CoachOffice.Drafting.Checks;

namespace CoachOffice.Drafting.Tests.Checks.Conditions;

public sealed class NeverTrueCheckTests
{
    [Theory]
    [InlineData("early below -1", "early below -3", false)]
    [InlineData("early.low at least marked", "early above 12", true)]
    [InlineData("early.low", "early.high", true)]
    [InlineData("early.low at least moderate", "early below -13", false)]
    [InlineData("early.low", "early not measured", true)]
    [InlineData("early.low", "early read at least 3 times", false)]
    public void Thresholds_that_exclude_each_other_are_refused(string first, string second, bool found)
    {
        var anomalies = new BookUnderCheck().Pattern("one", "10", $"when: [{first}, {second}]", "root: early.low").Find(AnomalyKind.NeverTrue);

        Assert.Equal(found, anomalies.Any(a => a.Severity == AnomalySeverity.Refuse && a.Sentence.StartsWith("never fires", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("early.low", "early", true)]
    [InlineData("early.low", "late", false)]
    public void A_need_that_the_rest_contradicts_is_refused(string when, string need, bool found)
    {
        var anomalies = Book($"when: [{{ any: [{when}, early below -5] }}, middle.low]", $"needs: [{need}]").Find(AnomalyKind.NeverTrue);

        Assert.Equal(found, anomalies.Count > 0);
        if (found) Assert.Contains("'early in range'", anomalies[0].Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("middle.out", true)]
    [InlineData("middle measured", true)]
    [InlineData("middle not in range", true)]
    [InlineData("middle.low at least marked", false)]
    [InlineData("middle.high", false)]
    public void An_unless_that_the_rest_implies_is_refused_with_the_lesson_that_shows_it(string unless, bool found)
    {
        var anomalies = Book("when: [early.low, middle.low]", $"unless: [{unless}]").Find(AnomalyKind.NeverTrue);

        Assert.Equal(found, anomalies.Count > 0);
        if (found) Assert.Equal(["early", "middle"], anomalies[0].Example!.Readings.Select(r => r.Measure.Value).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("early.low, middle.low, late.low", false)]
    [InlineData("early.low, middle.low", true)]
    [InlineData("early.low", true)]
    public void A_pattern_ruled_out_wherever_it_would_fire_is_refused(string other, bool found)
    {
        var anomalies = Book("when: [early.low, middle.low]", "unless: [pattern other]").Pattern("other", "20", $"when: [{other}]", "root: early.low").Find(AnomalyKind.NeverTrue);

        // The other wants one at least moderate as well, and gets it only from what it names itself.
        Assert.Equal(found && other != "early.low", anomalies.Any(a => a.Severity == AnomalySeverity.Refuse));
    }

    [Fact]
    public void A_fault_no_club_has_a_range_for_is_never_reached()
    {
        var anomaly = Assert.Single(Book("when: [early.low, strike.high]").Range("strike", "").Find(AnomalyKind.NeverTrue));

        Assert.Contains("'strike.high' is reached with no club", anomaly.Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("clubs: [driver, iron]", "iron: [0, 10]", 1)]
    [InlineData("clubs: [iron]", "iron: [0, 10]", 0)]
    [InlineData("clubs: [driver, iron]", "driver: [0, 10], iron: [0, 10]", 0)]
    public void A_club_with_which_it_never_fires_is_named(string clubs, string range, int found) =>
        Assert.Equal(found, Book("when: [early.low]", clubs).Range("early", range).Find(AnomalyKind.NeverTrue).Count);

    [Theory]
    [InlineData("early.high", 1)]
    [InlineData("late.low", 0)]
    public void A_way_that_can_never_be_the_reason_is_named(string way, int found) =>
        Assert.Equal(found, Book($"when: [early.low, {{ any: [middle.low, {way}] }}]").Find(AnomalyKind.NeverTrue).Count);

    private static BookUnderCheck Book(params string[] lines) => new BookUnderCheck().Pattern("one", "10", [.. lines, "root: early.low"]);
}
