using CoachOffice.Drafting.Checks;

namespace CoachOffice.Drafting.Tests.Checks.Reach;

public sealed class GateCheckTests
{
    [Theory]
    [InlineData("late.low", 1)]
    [InlineData("late.high", 0)]
    [InlineData("late.low, late.high", 0)]
    public void A_drill_that_trains_only_what_has_no_edge_has_no_gate(string trains, int found)
    {
        var drill = $"  - {{ id: spare, name: Spare, trains: [{trains}], stages: [half], rooms: [range], club: none, steps: [Do it], cue: see it, done-when: {{ hits: 8, of: 10, what: swings }} }}";
        var anomalies = new BookUnderCheck().Pattern("one", "10", "when: [early.low]", "root: early.low").Range("late", "iron: [null, 10]").Drill(drill).Find(AnomalyKind.NoGate);

        Assert.Equal(found, anomalies.Count(a => a.Entries[0].Id == "spare"));
    }

    [Fact]
    public void A_drill_for_no_fault_goes_by_results() =>
        Assert.Empty(new BookUnderCheck().Pattern("one", "10", "when: [early.low]", "root: early.low")
            .Drill("  - { id: spare, name: Spare, trains: [], stages: [play], rooms: [range], club: full, steps: [Do it], cue: see it, done-when: { hits: 8, of: 10, what: swings } }").Find(AnomalyKind.NoGate));
}
