using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.FollowUps;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>Restarts a paused plan on a day. Only a coach does, never the program.</summary>
public sealed class ResumePlan(PlanDoor door, ApprovalCheck check, PlanCourse course, PlanMessages messages, PracticeDays days)
{
    /// <summary>The plan's id, or what stands against it.</summary>
    public Task<Outcome<PlanId>> On(PlanId plan, int version, LocalDate restartsOn, string reason, Actor actor, CancellationToken stop = default)
    {
        var deed = new PlanDeed { Plan = plan, Version = version, Actor = actor, Action = "plan-resumed", Doing = "restart plans" };
        return door.Change(deed, p => Resume(p, restartsOn, reason, deed.Actor, stop), stop);
    }

    private async Task<IReadOnlyList<Refusal>> Resume(Plan plan, LocalDate on, string reason, Actor actor, CancellationToken stop)
    {
        if (plan.Status != PlanStatus.OnHold) return [new("plan-not-on-hold", $"This plan is {Terms.Of(plan.Status)}; only a paused one can be restarted.")];
        var today = await days.Today(stop);
        if (on < today || on > today.PlusYears(1)) return [new("restart-day", "Give the day practice goes on: today or later, within a year.", "RestartsOn")];
        if (Reasons.Check(reason) is { } wrong) return [wrong];
        var against = await check.Body(plan, stop);
        if (against.Count > 0) return against;
        var dates = await days.Dates(stop);
        var pausedOn = dates.DayOf(plan.Changes.Where(c => c.To == PlanStatus.OnHold).Max(c => c.At));
        plan.Become(PlanStatus.Active, door.Step(actor, reason.Trim()));
        plan.RestartOn(on);
        await messages.Release(plan.Id, dates.Morning(on), stop);
        await course.Postpone(plan, pausedOn, on, stop);
        return [];
    }
}
