using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.FollowUps;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Plans;

/// <summary>What follows from a practice note, in its transaction.</summary>
public sealed class AfterCheckIn(OfficeDb db, PlanCourse course, PlanMessages messages, Encouraging encouraging, PlanDoor door)
{
    /// <summary>Reason of a pause by a pain report.</summary>
    public const string PainReport = "pain-report";

    private const int DaysOfCount = 2;

    /// <summary>Pain pauses; practice moves what is due and may open a gate that counts. True when a gate opened.</summary>
    public async Task<bool> Follow(Plan plan, CheckIn note, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(note);
        if (note.Pain)
        {
            await Pause(plan, stop);
            return false;
        }

        var opened = await CountReached(plan, note, stop);
        await course.MoveLooks(plan, stop);
        await encouraging.After(plan, note.PracticedOn, stop);
        return opened;
    }

    // Pain anywhere pauses everything of this student, whichever plan it was reported on.
    private async Task Pause(Plan plan, CancellationToken stop)
    {
        var running = await db.Plans.Include(p => p.Stages).Include(p => p.Changes).Where(p => p.StudentId == plan.StudentId && p.Status == PlanStatus.Active).ToListAsync(stop);
        foreach (var active in running)
        {
            active.Become(PlanStatus.OnHold, door.Step(Actor.Student, PainReport));
            await messages.Hold(active.Id, stop);
        }
    }

    private async Task<bool> CountReached(Plan plan, CheckIn note, CancellationToken stop)
    {
        if (note.StageId is not { } id || plan.Stages.FirstOrDefault(s => s.Id == id && s.Status == StageStatus.Current) is not { } stage) return false;
        var reachedOn = await db.CheckIns.Where(c => c.StageId == id && c.CountReached).Select(c => c.PracticedOn).Distinct().CountAsync(stop);
        if (reachedOn < DaysOfCount) return false;
        if (await course.Advance(plan, stage, await door.Today(stop), stop)) return true;
        plan.Become(PlanStatus.Completed, door.Step(Actor.Student, "last-gate-opened"));
        await course.End(plan, "plan-completed", keepSecondLook: true, stop);
        return true;
    }
}
