using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.FollowUps;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>What begins with an approved plan: its first rungs with their re-tests, its delivery, and a first note.</summary>
public sealed class PlanStart(PlanMessages messages, PlanCourse course, Encouraging encouraging, PracticeClock clock)
{
    /// <summary>Writes it all into the caller's transaction.</summary>
    public async Task Deliver(Plan plan, LocalDate today, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        await course.Begin(plan, today, stop);
        await messages.Write(
            new DueMessage
            {
                Kind = MessageKind.PlanDelivery,
                StudentId = plan.StudentId,
                PlanId = plan.Id,
                DueAt = clock.Now,
                AtOnce = true,
                Reason = $"plan-approved by {plan.ApprovedBy}",
                Occasion = "approval",
            },
            stop);
        await encouraging.After(plan, today, stop);
    }
}
