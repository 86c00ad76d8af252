using CoachOffice.Data;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Measuring;

/// <summary>The verdict of a re-test and what follows from it, in its transaction.</summary>
public sealed class AfterRetest(OfficeDb db, PlanCourse course, PlanMessages messages, PlanDoor door)
{
    // When reading error hides the answer, the number is read once more soon.
    private const int LookAgainSoonDays = 7;

    /// <summary>Gives the verdict; the gate opens, or the rung stays, or the number is read once more.</summary>
    public async Task<KeptVerdict> Judge(JudgedRetest judged, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(judged);
        var plain = Verdicts.Judge(judged.Baseline.Before, judged.After, judged.Baseline.Measure, judged.Baseline.Range);
        var work = await Work(judged, stop);
        var inVain = plain.Movement == Movement.NoChangeBeyondReadingError && work.IsEnough;
        var verdict = VerdictText.Keep(judged.Baseline, judged.After, plain, inVain);
        judged.Look.Judge(verdict, door.Now);
        await messages.EndAbout(judged.Look.Id, "answered", stop);
        await GoOn(judged, verdict, stop);
        return verdict;
    }

    private async Task<WorkOnStage> Work(JudgedRetest judged, CancellationToken stop)
    {
        var notes = await db.CheckIns.AsNoTracking().Where(c => c.PlanId == judged.Plan.Id).ToListAsync(stop);
        return WorkOnStage.Of(notes, judged.Stage.StartedOn ?? judged.HeldOn, judged.HeldOn);
    }

    private async Task GoOn(JudgedRetest judged, KeptVerdict verdict, CancellationToken stop)
    {
        var (plan, stage, today) = (judged.Plan, judged.Stage, await door.Today(stop));
        var isCurrent = stage.Status == StageStatus.Current && plan.Status == PlanStatus.Active;
        if (verdict.Movement != Movement.CannotTell && !judged.Look.IsSecondLook) await course.LookAgain(plan, stage, judged.HeldOn, stop);
        if (!isCurrent) return;
        if (GateLaw.Opens(stage.Gate, verdict, judged.Baseline.Range)) await Open(judged, stop);
        else if (verdict.Movement == Movement.CannotTell) await course.Look(plan, stage, today.PlusDays(LookAgainSoonDays), stop);
        else if (judged.Look.IsSecondLook) await course.Look(plan, stage, FollowUpDates.StageEnd(today, stage.Stage, judged.Baseline.Book.Dosage), stop);
    }

    private async Task Open(JudgedRetest judged, CancellationToken stop)
    {
        if (await course.Advance(judged.Plan, judged.Stage, await door.Today(stop), stop)) return;
        judged.Plan.Become(PlanStatus.Completed, door.Step(judged.Actor, "last-gate-opened"));
        await course.End(judged.Plan, "plan-completed", keepSecondLook: true, stop);
    }
}
