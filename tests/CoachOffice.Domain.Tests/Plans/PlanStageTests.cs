using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using NodaTime;

namespace CoachOffice.Domain.Tests.Plans;

public sealed class PlanStageTests
{
    private static readonly LocalDate Today = new(2026, 5, 4);
    private static readonly PlanDrill Drill = new() { Drill = "shadow-head", Name = "Shadow head", Sets = 2, Reps = 10, SessionsPerWeek = 3, MinutesPerSession = 12, Cue = "stay" };
    private static readonly PlanGate Gate = new() { Kind = GateKind.Measure, Measure = "impact-spine-tilt", AtLeast = 20, Readings = 3, Text = "Tilt of 20 or more." };
    private static readonly StageContent Content = new(FaultId.Parse("impact-spine-tilt.low"), Stage.Half, [Drill], Gate);

    [Fact]
    public void A_rung_holds_what_was_drafted_and_waits()
    {
        var rung = Rung();
        Assert.Equal((FixedIds.Of(1), PlanId.From(FixedIds.Of(2)), 3, StageStatus.Waiting), (rung.Id, rung.PlanId, rung.Order, rung.Status));
        Assert.Equal(("impact-spine-tilt.low", Content), (rung.Fault, rung.Content));
    }

    [Fact]
    public void Beginning_sets_its_day_and_its_end_and_a_pause_moves_the_end_alone()
    {
        var rung = Rung();
        rung.Begin(Today, Today.PlusDays(7));
        rung.Postpone(Today.PlusDays(12));
        Assert.Equal((StageStatus.Current, Today, Today.PlusDays(12), null), (rung.Status, rung.StartedOn!.Value, rung.DueOn!.Value, rung.EndedOn));
    }

    [Fact]
    public void It_ends_done_or_left_out()
    {
        var (done, left) = (Rung(), Rung());
        done.Finish(Today);
        left.Skip(Today);
        Assert.Equal((StageStatus.Done, Today), (done.Status, done.EndedOn!.Value));
        Assert.Equal((StageStatus.Skipped, Today), (left.Status, left.EndedOn!.Value));
    }

    [Fact]
    public void The_coach_may_change_its_drills_its_gate_and_its_place()
    {
        var rung = Rung();
        rung.Rewrite([Drill with { Reps = 15 }], Gate with { AtLeast = 18 });
        rung.MoveTo(1);
        Assert.Equal((15, 18.0, 1), (Assert.Single(rung.Drills).Reps, rung.Gate.AtLeast, rung.Order));
    }

    private static PlanStage Rung() => PlanStage.Of(FixedIds.Of(1), PlanId.From(FixedIds.Of(2)), 3, Content);
}
