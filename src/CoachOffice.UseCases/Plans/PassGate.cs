using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;

namespace CoachOffice.UseCases.Plans;

/// <summary>Opens a rung's gate by the coach's own judgement.</summary>
public sealed class PassGate(PlanDoor door, PlanCourse course)
{
    /// <summary>The plan's id, or why not.</summary>
    public Task<Outcome<PlanId>> For(PlanId plan, int version, Guid stageId, string reason, Actor actor, CancellationToken stop = default)
    {
        var deed = new PlanDeed { Plan = plan, Version = version, Actor = actor, Action = "gate-passed", Doing = "pass gates", Detail = $"stage:{stageId:N}" };
        return door.Change(deed, p => Pass(p, stageId, reason, actor, stop), stop);
    }

    private async Task<IReadOnlyList<Refusal>> Pass(Plan plan, Guid stageId, string reason, Actor actor, CancellationToken stop)
    {
        if (plan.Status != PlanStatus.Active) return [new("plan-not-active", $"This plan is {Terms.Of(plan.Status)}; gates open in an active one.")];
        if (plan.Stages.FirstOrDefault(s => s.Id == stageId) is not { } stage) return [new("stage-not-found", "There is no such stage in this plan.")];
        if (stage.Status != StageStatus.Current) return [new("stage-not-current", $"This stage is {Terms.Of(stage.Status)}; only one being worked on can be passed.")];
        if (Reasons.Check(reason) is { } wrong) return [wrong];
        if (await course.Advance(plan, stage, await door.Today(stop), stop)) return [];
        plan.Become(PlanStatus.Completed, door.Step(actor, "last-gate-opened"));
        await course.End(plan, "plan-completed", keepSecondLook: true, stop);
        return [];
    }
}
