using CoachOffice.Drafting.Checks;

namespace CoachOffice.Drafting.Tests.Checks.Conditions;

public sealed class CircleCheckTests
{
    [Theory]
    [InlineData("late, after: [middle]", 1)]
    [InlineData("strike, after: [middle]", 0)]
    public void Before_and_train_after_may_not_go_round_together(string law, int found)
    {
        var anomalies = new BookUnderCheck().Pattern("one", "10", "when: [early.low]", "root: early.low", "before: [two]").Pattern("two", "20", "when: [middle.low]", "root: middle.low")
            .Pattern("three", "30", "when: [late.low]", "root: late.low", "before: [one]").With($"train-after:\n  - {{ work: {law}, because: So }}").Find(AnomalyKind.Circle);

        Assert.Equal(found, anomalies.Count);
        if (found == 0) return;
        Assert.Equal(AnomalySeverity.Refuse, anomalies[0].Severity);
        Assert.Contains("early -> middle -> late -> early", anomalies[0].Sentence, StringComparison.Ordinal);
        Assert.Equal(2, anomalies[0].Example!.Readings.Count);
    }

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
}
