using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;

namespace CoachOffice.UseCases.Plans;

/// <summary>Ends a plan that has done its work; a second look that is still due stays.</summary>
public sealed class CompletePlan(PlanDoor door, PlanCourse course)
{
    /// <summary>The plan's id, or why not.</summary>
    public Task<Outcome<PlanId>> Now(PlanId plan, int version, string reason, Actor actor, CancellationToken stop = default)
    {
        var deed = new PlanDeed { Plan = plan, Version = version, Actor = actor, Action = "plan-completed", Doing = "complete plans" };
        return door.Change(deed, p => Complete(p, reason, actor, stop), stop);
    }

    private async Task<IReadOnlyList<Refusal>> Complete(Plan plan, string reason, Actor actor, CancellationToken stop)
    {
        if (!plan.MayBecome(PlanStatus.Completed)) return [new("plan-not-active", $"This plan is {Terms.Of(plan.Status)}; only an active one can be completed.")];
        if (Reasons.Check(reason) is { } wrong) return [wrong];
        plan.Become(PlanStatus.Completed, door.Step(actor, reason.Trim()));
        await course.End(plan, "plan-completed", keepSecondLook: true, stop);
        return [];
    }
}
