using CoachOffice.Drafting.Checks;

namespace CoachOffice.Drafting.Tests.Checks.Ranges;

public sealed class AdjustmentCheckTests
{
    private static BookUnderCheck Book => new BookUnderCheck().Pattern("one", "10", "when: [early.low]", "root: early.low");

    [Theory]
    [InlineData("high-by: -10.5", true)]
    [InlineData("high-by: -10", false)]
    [InlineData("low-by: 10.5", true)]
    [InlineData("low-by: -101", true)]
    [InlineData("low-by: -100", false)]
    public void A_range_may_not_turn_inside_out_or_leave_the_plausible(string by, bool found)
    {
        var anomalies = Book.With($"adjustments:\n  - {{ measure: early, from-age: 60, {by} }}").Find(AnomalyKind.InsideOut);

        Assert.Equal(found ? 5 : 0, anomalies.Count);
        Assert.All(anomalies, a => Assert.Equal(AnomalySeverity.Refuse, a.Severity));
        Assert.All(anomalies, a => Assert.Equal(60, a.Example!.Age));
    }

    [Theory]
    [InlineData("low-by: -1", 1)]
    [InlineData("high-by: 1", 0)]
    public void Two_adjustments_of_one_edge_add_up(string second, int found)
    {
        var anomalies = Book.With($"adjustments:\n  - {{ measure: early, from-age: 60, low-by: -2 }}\n  - {{ measure: early, from-age: 70, {second} }}").Find(AnomalyKind.Overlap);

        Assert.Equal(found, anomalies.Count);
    }

    [Theory]
    [InlineData("low-by: -1", 1)]
    [InlineData("high-by: 1", 0)]
    public void An_adjustment_of_an_edge_nobody_has_does_nothing(string by, int found) =>
        Assert.Equal(found, Book.Range("late", "iron: [null, 10]").With($"adjustments:\n  - {{ measure: late, from-age: 60, {by} }}").Find(AnomalyKind.NeverTrue).Count);

    [Theory]
    [InlineData("levels: [beginner]", 5)]
    [InlineData("levels: [elite]", 0)]
    public void What_age_and_level_move_together_counts(string levels, int found)
    {
        var anomalies = Book.With($"adjustments:\n  - {{ measure: early, levels: [beginner], low-by: 6 }}\n  - {{ measure: early, from-age: 60, {levels}, high-by: -6 }}").Find(AnomalyKind.InsideOut);

        Assert.Equal(found, anomalies.Count);
        Assert.All(anomalies, a => Assert.Equal(Domain.Students.Level.Beginner, a.Example!.Student.Level));
    }

    [Theory]
    [InlineData("levels: [beginner, elite]", 1)]
    [InlineData("levels: [elite]", 0)]
    public void Two_levels_that_overlap_add_up(string levels, int found) =>
        Assert.Equal(found, Book.With($"adjustments:\n  - {{ measure: early, levels: [beginner], low-by: -1 }}\n  - {{ measure: early, from-age: 60, {levels}, low-by: -1 }}").Find(AnomalyKind.Overlap).Count);
}
