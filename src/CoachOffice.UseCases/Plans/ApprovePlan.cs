using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.FollowUps;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Plans;

/// <summary>Approves a plan: its rungs, re-tests and messages begin in one transaction. Nothing goes to a student before this.</summary>
public sealed class ApprovePlan(PlanDoor door, ApprovalCheck check, PlanEndings endings, PlanStart begin)
{
    /// <summary>The plan's id, or everything that stands against it.</summary>
    public Task<Outcome<PlanId>> Now(PlanId plan, int version, Actor actor, CancellationToken stop = default)
    {
        var deed = new PlanDeed { Plan = plan, Version = version, Actor = actor, Action = "plan-approved", Doing = "approve plans" };
        return door.Change(deed, p => Approve(p, actor, stop), stop);
    }

    private async Task<IReadOnlyList<Refusal>> Approve(Plan plan, Actor actor, CancellationToken stop)
    {
        if (plan.Status != PlanStatus.Draft) return [new("plan-not-draft", $"This plan is {Terms.Of(plan.Status)}; only a draft can be approved.")];
        var against = await check.Of(plan, stop);
        if (against.Count > 0) return against;
        await endings.Replace(plan, actor, stop);
        await endings.AnswerReview(plan, actor, stop);
        plan.Become(PlanStatus.Active, door.Step(actor, "approved"));
        await begin.Deliver(plan, await door.Today(stop), stop);
        return [];
    }
}
