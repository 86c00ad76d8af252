using CoachOffice.Drafting.Checks;

namespace CoachOffice.Drafting.Tests.Checks.Conditions;

public sealed class CircleCheckTests
{
    [Fact]
    public void Causes_that_go_round_are_printed()
    {
        var anomaly = Assert.Single(Causes("strike.low", "flight.low").Find(AnomalyKind.Circle));

        Assert.Contains("flight.low -> strike.low -> flight.low", anomaly.Sentence, StringComparison.Ordinal);
        Assert.Equal(2, anomaly.Example!.Readings.Count);
    }

    [Fact]
    public void A_cause_back_in_time_closes_no_circle_as_the_drafter_drops_it() => Assert.Empty(Causes("early.low", "flight.low").Find(AnomalyKind.Circle));

    [Fact]
    public void Causes_on_different_sides_are_no_circle() =>
        Assert.Empty(new BookUnderCheck().Pattern("one", "10", "when: [strike.low, flight.low]", "root: strike.low", "explains: [flight.low]")
            .Pattern("two", "20", "when: [flight.high, strike.low]", "root: flight.high", "explains: [strike.low]").Find(AnomalyKind.Circle));

    [Theory]
    [InlineData("early, after: [middle]", true)]
    [InlineData("middle, after: [early]", false)]
    public void Before_and_train_after_may_not_contradict(string law, bool found)
    {
        var anomalies = new BookUnderCheck().Pattern("one", "10", "when: [early.low]", "root: early.low", "before: [two]").Pattern("two", "20", "when: [middle.low]", "root: middle.low")
            .With($"train-after:\n  - {{ work: {law}, because: So }}").Find(AnomalyKind.Circle);

        Assert.Equal(found ? 1 : 0, anomalies.Count);
        if (!found) return;
        Assert.Equal(AnomalySeverity.Refuse, anomalies[0].Severity);
        Assert.Contains("early -> middle -> early", anomalies[0].Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("before: [one]", true)]
    [InlineData("forbids: [strike.low]", false)]
    public void Patterns_each_before_the_other_are_refused(string second, bool found) =>
        Assert.Equal(found, new BookUnderCheck().Pattern("one", "10", "when: [early.low]", "root: early.low", "before: [two]")
            .Pattern("two", "20", "when: [middle.low]", "root: middle.low", second).Find(AnomalyKind.Circle).Count == 1);

    [Theory]
    [InlineData("over: [one]", 1)]
    [InlineData("precedes: no", 0)]
    public void Patterns_each_over_the_other_are_refused(string second, int found)
    {
        string[] lines = ["when: [early.low, late.low]", "root: early.low", .. second.StartsWith("over", StringComparison.Ordinal) ? [second] : Array.Empty<string>()];
        var anomalies = new BookUnderCheck().Pattern("one", "10", "when: [early.low, middle.low]", "root: early.low", "over: [two]").Pattern("two", "20", lines).Find(AnomalyKind.Circle);

        Assert.Equal(found, anomalies.Count);
        Assert.All(anomalies, a => Assert.Equal(3, a.Example!.Readings.Count));
    }

    private static BookUnderCheck Causes(string first, string second) =>
        new BookUnderCheck().Pattern("one", "10", $"when: [{first}, {second}]", $"root: {first}", $"explains: [{second}]")
            .Pattern("two", "20", $"when: [{second}, {first}]", $"root: {second}", $"explains: [{first}]");
}
