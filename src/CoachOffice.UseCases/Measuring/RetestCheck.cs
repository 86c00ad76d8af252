using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Measuring;

/// <summary>What stands against recording a re-test now.</summary>
public sealed class RetestCheck(OfficeDb db, PracticeClock clock)
{
    /// <summary>The first thing that stands against it, or null.</summary>
    public async Task<Refusal?> Of(Plan plan, Retest look, RetestForm form, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(look);
        ArgumentNullException.ThrowIfNull(form);
        if (look.Version != form.Version) return new(Clash.Code, "Someone changed this re-test after you opened it. Nothing was overwritten: look at it again, then save once more.");
        if (look.Status is not (RetestStatus.Ready or RetestStatus.InProgress)) return new("retest-over", $"This re-test is {Terms.Of(look.Status)} already.");
        if (plan.Status == PlanStatus.OnHold) return new("plan-on-hold", "This plan is paused, so nothing is judged. Restart it first, with a date.");
        if (plan.Status != PlanStatus.Active && !(plan.Status == PlanStatus.Completed && look.IsSecondLook)) return new("plan-ended", $"This plan is {Terms.Of(plan.Status)}; its numbers are not judged any more.");
        return await Day(plan, form.HeldOn, stop);
    }

    private async Task<Refusal?> Day(Plan plan, LocalDate heldOn, CancellationToken stop)
    {
        if (heldOn > await clock.Today(stop)) return new("retest-day", "Give the day the swings were made: today or earlier.", nameof(RetestForm.HeldOn));
        var lesson = await db.Lessons.Where(l => l.Id == plan.LessonId).Select(l => l.HeldOn).SingleAsync(stop);
        if (heldOn < lesson) return new("retest-day", "A re-test comes after the lesson it is compared with.", nameof(RetestForm.HeldOn));
        var taught = !Verdicts.MayJudge(lesson, heldOn)
            || await db.Lessons.AnyAsync(l => l.StudentId == plan.StudentId && l.HeldOn == heldOn && l.Kind == LessonKind.Lesson, stop);
        return taught ? new("retest-on-lesson-day", "A number read on the day of a lesson says little about what stays. Take the reading on another day.", nameof(RetestForm.HeldOn)) : null;
    }
}
