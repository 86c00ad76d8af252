using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;

namespace CoachOffice.UseCases.Plans;

/// <summary>Says that a plan should never have been: made for the wrong student, or from wrong readings. It stays readable for the coach.</summary>
public sealed class MarkPlanInError(PlanDoor door, PlanCourse course)
{
    /// <summary>The plan's id, or why not.</summary>
    public Task<Outcome<PlanId>> Now(PlanId plan, int version, string reason, Actor actor, CancellationToken stop = default)
    {
        var deed = new PlanDeed { Plan = plan, Version = version, Actor = actor, Action = "plan-in-error", Doing = "mark plans as entered in error" };
        return door.Change(deed, p => Mark(p, reason, actor, stop), stop);
    }

    private async Task<IReadOnlyList<Refusal>> Mark(Plan plan, string reason, Actor actor, CancellationToken stop)
    {
        if (!plan.MayBecome(PlanStatus.EnteredInError)) return [new("plan-ended", $"This plan is {Terms.Of(plan.Status)} already.")];
        if (Reasons.Check(reason) is { } wrong) return [wrong];
        plan.Become(PlanStatus.EnteredInError, door.Step(actor, reason.Trim()));
        await course.End(plan, "plan-in-error", keepSecondLook: false, stop);
        return [];
    }
}
