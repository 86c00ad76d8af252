using CoachOffice.Drafting.Checks;

namespace CoachOffice.Drafting.Tests.Checks.Reach;

public sealed class LadderReachCheckTests
{
    private const string Spare = "  - { id: spare, name: Spare, trains: [early.low], stages: [half], rooms: [range], club: none, steps: [Do it], cue: see it, done-when: { hits: 8, of: 10, what: swings } }";

    [Fact]
    public void A_drill_no_progression_names_is_never_offered()
    {
        var anomaly = Assert.Single(Book.Drill(Spare).Find(AnomalyKind.Unreachable));

        Assert.Equal("spare", anomaly.Entries[0].Id);
        Assert.Null(anomaly.Example);
    }

    [Fact]
    public void A_drill_of_a_progression_is() => Assert.Empty(Book.Find(AnomalyKind.Unreachable));

    [Theory]
    [InlineData(", style-only: true", "late.low,late.high")]
    [InlineData(", no-fault: [low]", "late.low")]
    [InlineData("", "")]
    public void A_progression_for_what_is_never_worked_on_is_named(string keys, string faults)
    {
        var anomalies = Book.Measure("late", keys).Find(AnomalyKind.Unreachable);

        Assert.Equal(faults, string.Join(',', anomalies.Select(a => a.Sentence.Split(' ')[0]).Order(StringComparer.Ordinal).Reverse()));
        if (keys.Contains("style", StringComparison.Ordinal)) Assert.All(anomalies, a => Assert.Equal("late", Assert.Single(a.Example!.Readings).Measure.Value));
    }

    [Fact]
    public void Style_that_a_pattern_has_as_its_root_is_worked_on() => Assert.Empty(Book.Measure("early", ", style-only: true").Pattern("two", "20", "when: [early.high]", "root: early.high").Find(AnomalyKind.Unreachable));

    [Fact]
    public void A_side_without_an_edge_is_never_out() => Assert.StartsWith("late.low", Assert.Single(Book.Range("late", "iron: [null, 10]").Find(AnomalyKind.Unreachable)).Sentence, StringComparison.Ordinal);

    private static BookUnderCheck Book => new BookUnderCheck().Pattern("one", "10", "when: [early.low]", "root: early.low");
}
