using CoachOffice.Drafting.Checks;

namespace CoachOffice.Drafting.Tests.Checks.Conditions;

/// <summary>Circles of causes and of `before` are refused when a book is read; what is left here are patterns over each other.</summary>
public sealed class CircleCheckTests
{
    [Fact]
    public void A_cause_back_in_time_closes_no_circle_as_the_drafter_drops_it() => Assert.Empty(Causes("early.low", "flight.low").Find(AnomalyKind.Circle));

    [Fact]
    public void Causes_on_different_sides_are_no_circle() =>
        Assert.Empty(new BookUnderCheck().Pattern("one", "10", "when: [strike.low, flight.low]", "root: strike.low", "explains: [flight.low]")
            .Pattern("two", "20", "when: [flight.high, strike.low]", "root: flight.high", "explains: [strike.low]").Find(AnomalyKind.Circle));

    [Fact]
    public void Before_and_train_after_that_agree_are_no_circle() =>
        Assert.Empty(new BookUnderCheck().Pattern("one", "10", "when: [early.low]", "root: early.low", "before: [two]").Pattern("two", "20", "when: [middle.low]", "root: middle.low")
            .With("train-after:\n  - { work: middle, after: [early], because: So }").Find(AnomalyKind.Circle));

    [Fact]
    public void One_pattern_before_another_is_no_circle() =>
        Assert.Empty(new BookUnderCheck().Pattern("one", "10", "when: [early.low]", "root: early.low", "before: [two]")
            .Pattern("two", "20", "when: [middle.low]", "root: middle.low", "forbids: [strike.low]").Find(AnomalyKind.Circle));

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
