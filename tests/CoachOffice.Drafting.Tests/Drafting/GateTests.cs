using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;

namespace CoachOffice.Drafting.Tests.Drafting;

/// <summary>What opens the next stage.</summary>
public sealed class GateTests
{
    [Fact]
    public void Counts_then_the_measure_then_results_then_the_coach()
    {
        var kinds = Gates("downswing-head-shift", 11).ToDictionary(s => s.Stage, s => s.Gate.Kind);
        Assert.Equal((GateKind.Count, GateKind.Count, GateKind.Measure, GateKind.Outcome, GateKind.Coach), (kinds[Stage.Rehearse], kinds[Stage.Half], kinds[Stage.Full], kinds[Stage.Mix], kinds[Stage.Play]));
    }

    [Theory]
    [InlineData(8.2, 5.0)]
    [InlineData(21.0, 13.0)]
    [InlineData(9.0, 5.8)]
    public void Half_the_way_but_more_than_the_smallest_real_change(double value, double atMost)
    {
        // Wanted up to 5 cm. 21: half of 16. 9: half is 2 but the smallest real change with 5 and 5 swings is 3.15. 8.2: the whole way to the edge, rounded.
        var gate = Gates("downswing-head-shift", value).Single(s => s.Stage == Stage.Full).Gate;
        Assert.Equal((atMost, null), (gate.AtMost, gate.AtLeast));
        Assert.InRange(gate.Readings, 5, 12);
    }

    /// <summary>8 cm is one step beyond 5 cm: mild, so the edge itself is asked for and not what would be a real change.</summary>
    [Fact]
    public void A_mild_fault_is_asked_to_reach_the_edge()
    {
        var draft = Drafter.Draft(HouseBook.Compiled, HouseBook.Lesson(Club.Driver, HouseBook.Value("impact-spine-tilt", 10), HouseBook.Value("downswing-head-shift", 8, readings: 20)));
        Assert.Equal(5.0, draft.Stages.Single(s => s.Fault.ToString() == "downswing-head-shift.high" && s.Stage == Stage.Full).Gate.AtMost);
    }

    [Fact]
    public void A_low_fault_is_asked_for_at_least()
    {
        var gate = Gates("downswing-pelvis-shift", -8).Single(s => s.Stage == Stage.Full).Gate;
        Assert.Equal((-2.0, null, 5), (gate.AtLeast, gate.AtMost, gate.Readings));
    }

    private static IReadOnlyList<DraftStage> Gates(string measure, double value)
    {
        var facts = HouseBook.Lesson(Club.Driver, HouseBook.Value("tempo-ratio", 3), HouseBook.Value("impact-spine-tilt", 24), HouseBook.Value("address-spine-tilt", 8), HouseBook.Value("backswing-pelvis-shift", 0),
            HouseBook.Value("stance-width", 1.2), HouseBook.Value("top-spine-tilt", 8), HouseBook.Value(measure, value));
        return Drafter.Draft(HouseBook.Compiled, facts).Stages;
    }
}
