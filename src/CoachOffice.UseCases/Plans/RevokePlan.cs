using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;

namespace CoachOffice.UseCases.Plans;

/// <summary>Takes a plan back, or throws a draft away. It stays readable for the coach.</summary>
public sealed class RevokePlan(PlanDoor door, PlanCourse course)
{
    /// <summary>The plan's id, or why not.</summary>
    public Task<Outcome<PlanId>> Now(PlanId plan, int version, string reason, Actor actor, CancellationToken stop = default)
    {
        var deed = new PlanDeed { Plan = plan, Version = version, Actor = actor, Action = "plan-revoked", Doing = "revoke plans" };
        return door.Change(deed, p => Revoke(p, reason, actor, stop), stop);
    }

    private async Task<IReadOnlyList<Refusal>> Revoke(Plan plan, string reason, Actor actor, CancellationToken stop)
    {
        if (!plan.MayBecome(PlanStatus.Revoked)) return [new("plan-ended", $"This plan is {Terms.Of(plan.Status)} already.")];
        if (Reasons.Check(reason) is { } wrong) return [wrong];
        plan.Become(PlanStatus.Revoked, door.Step(actor, reason.Trim()));
        await course.End(plan, "plan-revoked", keepSecondLook: false, stop);
        return [];
    }
}
