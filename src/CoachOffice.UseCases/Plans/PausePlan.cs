using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.FollowUps;

namespace CoachOffice.UseCases.Plans;

/// <summary>Pauses a plan and its messages.</summary>
public sealed class PausePlan(PlanDoor door, PlanMessages messages)
{
    /// <summary>The plan's id, or why not.</summary>
    public Task<Outcome<PlanId>> Now(PlanId plan, int version, string reason, Actor actor, CancellationToken stop = default)
    {
        var deed = new PlanDeed { Plan = plan, Version = version, Actor = actor, Action = "plan-paused", Doing = "pause plans" };
        return door.Change(deed, p => Pause(p, reason, actor, stop), stop);
    }

    private async Task<IReadOnlyList<Refusal>> Pause(Plan plan, string reason, Actor actor, CancellationToken stop)
    {
        if (!plan.MayBecome(PlanStatus.OnHold)) return [new("plan-not-active", $"This plan is {Terms.Of(plan.Status)}; only an active one can be paused.")];
        if (Reasons.Check(reason) is { } wrong) return [wrong];
        plan.Become(PlanStatus.OnHold, door.Step(actor, reason.Trim()));
        await messages.Hold(plan.Id, stop);
        return [];
    }
}
