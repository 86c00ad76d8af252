using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Lessons.Reviews;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Plans;

/// <summary>What ends when a plan begins, in the caller's transaction.</summary>
public sealed class PlanEndings(OfficeDb db, PlanDoor door, PlanCourse course, EndReview reviews)
{
    /// <summary>One plan at a time: two would ask for twice the minutes a student has.</summary>
    public async Task Replace(Plan plan, Actor actor, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var running = await db.Plans.Include(p => p.Stages).Include(p => p.Changes)
            .Where(p => p.StudentId == plan.StudentId && p.Id != plan.Id && (p.Status == PlanStatus.Active || p.Status == PlanStatus.OnHold)).ToListAsync(stop);
        foreach (var other in running)
        {
            other.Become(PlanStatus.Revoked, door.Step(actor, "replaced-by-newer-plan"));
            await course.End(other, "plan-replaced", keepSecondLook: false, stop);
        }
    }

    /// <summary>The plan is the answer to the remote review its lesson was made of.</summary>
    public Task AnswerReview(Plan plan, Actor actor, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return reviews.ByPlanOf(plan.LessonId, actor, stop);
    }
}
