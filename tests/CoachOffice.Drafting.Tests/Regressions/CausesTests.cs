using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Domain.Students;

namespace CoachOffice.Drafting.Tests.Regressions;

/// <summary>Drafts that once named a cause wrongly, each with the reading that showed it.</summary>
public sealed class CausesTests
{
    [Fact]
    public void Shoulders_that_open_first_leave_nothing_to_the_arms()
    {
        var draft = Draft(("shoulders-open-down", 16), ("impact-shoulders-open", 20), ("shaft-over-plane", 17), ("club-path", -9));
        Assert.Equal(["shoulders-open-early"], draft.Causes.Select(c => c.Pattern));
    }

    [Fact]
    public void Nor_does_the_aim()
    {
        var draft = Draft(("aim-shoulders", -11), ("impact-shoulders-open", 20), ("shaft-over-plane", 17), ("club-path", -9));
        Assert.Equal(["aim-makes-path"], draft.Causes.Select(c => c.Pattern));
    }

    [Fact]
    public void A_poor_smash_is_not_laid_at_the_door_of_a_slow_club()
    {
        var facts = HouseBook.Lesson(Club.Driver, HouseBook.Value("club-speed", 40), HouseBook.Value("ball-speed", 54));
        var draft = Drafter.Draft(HouseBook.Compiled, facts with { Student = facts.Student with { ClubSpeedGoal = new Quantity(46, Unit.MetrePerSecond) } });
        Assert.DoesNotContain(draft.Parked, p => p.Fault == FaultId.Parse("smash-factor.low") && p.Reason == ParkedReason.ExplainedBy);
    }

    [Fact]
    public void A_drift_of_the_head_is_explained_only_by_a_part_that_goes_the_same_way()
    {
        var draft = Draft(("backswing-head-shift", -16), ("downswing-head-shift", 25));
        Assert.Contains(draft.Parked, p => p.Fault == FaultId.Parse("head-drift.high") && p.By == FaultId.Parse("downswing-head-shift.high"));
        var other = Draft(("backswing-head-shift", -25), ("downswing-head-shift", 9));
        Assert.Contains(other.Parked, p => p.Fault == FaultId.Parse("head-drift.low") && p.By == FaultId.Parse("backswing-head-shift.low"));
    }

    [Fact]
    public void A_path_without_the_aim_beside_it_is_undecided()
    {
        var draft = Draft(("club-path", -9));
        Assert.Equal("club-path.low", draft.Focus.Single().Fault.ToString());
        Assert.Contains("Provisional", draft.Focus[0].Because, StringComparison.Ordinal);
        Assert.Contains(draft.MeasureNext, n => n.Measure == "aim-shoulders");
        Assert.All(draft.Stages, s => Assert.True(s.Stage <= Stage.Half));
    }

    [Fact]
    public void A_sway_explains_an_attack_angle_out_on_either_side()
    {
        var draft = Draft(("backswing-pelvis-shift", -12), ("downswing-pelvis-shift", -4), ("attack-angle", -8));
        Assert.Contains(draft.Parked, p => p.Fault == FaultId.Parse("attack-angle.low") && p.By == FaultId.Parse("backswing-pelvis-shift.low"));
    }

    [Fact]
    public void A_hurried_start_down_is_calmed_before_a_steep_shaft_is_flattened()
    {
        var draft = Draft(("tempo-ratio", 4.9), ("lag-angle", 125), ("shaft-over-plane", 16), ("impact-shaft-lean", -12));
        Assert.Equal(["tempo-ratio.high", "shaft-over-plane.high"], draft.Focus.Select(f => f.Fault.ToString()));
        Assert.Equal(["tempo-ratio.high"], draft.Focus[1].After.Select(f => f.ToString()));
    }

    private static Draft Draft(params (string Measure, double Value)[] readings) =>
        Drafter.Draft(HouseBook.Compiled, HouseBook.Lesson(Club.Driver, [.. readings.Select(r => HouseBook.Value(r.Measure, r.Value, 8))]));
}
