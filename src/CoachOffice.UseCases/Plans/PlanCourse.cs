using System.Linq.Expressions;
using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.FollowUps;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.UseCases.Plans;

/// <summary>How a plan goes from rung to rung: each fault's ladder runs by itself, each rung brings its own re-test and prompt.</summary>
public sealed class PlanCourse(OfficeDb db, PlanMessages messages, PlanBooks books, PracticeDays days, INewIds ids)
{
    /// <summary>Begins the first rung of each ladder.</summary>
    public async Task Begin(Plan plan, LocalDate today, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        foreach (var first in plan.Stages.Where(s => s.Status == StageStatus.Waiting).GroupBy(s => s.Fault).Select(g => g.First()).ToList())
            await Start(plan, first, today, stop);
    }

    /// <summary>A gate opened: ends the rung and begins the next of its ladder. False when that was the plan's last.</summary>
    public async Task<bool> Advance(Plan plan, PlanStage done, LocalDate today, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(done);
        done.Finish(today);
        await EndLooks(r => r.StageId == done.Id && !r.IsSecondLook, "gate-opened", stop);
        if (plan.Stages.FirstOrDefault(s => s.Fault == done.Fault && s.Status == StageStatus.Waiting) is { } next) await Start(plan, next, today, stop);
        return plan.Stages.Any(s => s.Status is StageStatus.Current or StageStatus.Waiting);
    }

    /// <summary>Asks for a reading at a rung's end; it is never a lesson's day and leaves a day's rest after practice.</summary>
    public async Task Look(Plan plan, PlanStage stage, LocalDate end, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(stage);
        var dates = await days.Dates(stop);
        var day = dates.RetestDay(end, await days.Last(plan.Id, stop), await days.Taught(plan.StudentId, stop));
        await Ask(Retest.Ask(ids.Next(), plan, stage, day, isSecondLook: false), dates, $"stage-end:{Terms.Of(stage.Stage)}", stop);
    }

    /// <summary>Asks for the second look, one to two weeks after a verdict.</summary>
    public async Task LookAgain(Plan plan, PlanStage stage, LocalDate verdictOn, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(stage);
        var day = FollowUpDates.SecondLook(verdictOn, await days.Taught(plan.StudentId, stop));
        await Ask(Retest.Ask(ids.Next(), plan, stage, day, isSecondLook: true), await days.Dates(stop), $"after-verdict:{LocalDatePattern.Iso.Format(verdictOn)}", stop);
    }

    /// <summary>After practice, or a lesson: first looks that are still open move to the first day that suits.</summary>
    public async Task MoveLooks(Plan plan, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var (dates, last, taught) = (await days.Dates(stop), await days.Last(plan.Id, stop), await days.Taught(plan.StudentId, stop));
        foreach (var look in await db.Retests.Where(r => r.PlanId == plan.Id && r.Status == RetestStatus.Ready && !r.IsSecondLook && r.AnsweredAt == null).ToListAsync(stop))
        {
            var end = plan.Stages.Single(s => s.Id == look.StageId).DueOn ?? look.DueOn;
            await MoveTo(look, dates.RetestDay(end, last, taught), dates, stop);
        }
    }

    /// <summary>After a pause: everything planned is put off by its length.</summary>
    public async Task Postpone(Plan plan, LocalDate pausedOn, LocalDate restartsOn, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var dates = await days.Dates(stop);
        foreach (var stage in plan.Stages.Where(s => s.Status == StageStatus.Current && s.DueOn is not null))
            stage.Postpone(FollowUpDates.Postponed(stage.DueOn!.Value, pausedOn, restartsOn));
        foreach (var look in await db.Retests.Where(r => r.PlanId == plan.Id && r.Status == RetestStatus.Ready).ToListAsync(stop))
            await MoveTo(look, FollowUpDates.Postponed(look.DueOn, pausedOn, restartsOn), dates, stop);
    }

    /// <summary>The plan ended: nothing is read or sent for it any more, save a second look when it was completed.</summary>
    public async Task End(Plan plan, string why, bool keepSecondLook, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        await messages.End(plan.Id, why, keepSecondLook ? [MessageKind.SecondLook] : [], stop);
        await EndLooks(r => r.PlanId == plan.Id && !(keepSecondLook && r.IsSecondLook), why, stop);
    }

    private async Task Start(Plan plan, PlanStage stage, LocalDate today, CancellationToken stop)
    {
        var book = await books.Of(plan.DraftId, stop);
        var end = FollowUpDates.StageEnd(today, stage.Stage, book.Dosage);
        stage.Begin(today, end);
        await Look(plan, stage, end, stop);
    }

    private async Task Ask(Retest look, FollowUpDates dates, string reason, CancellationToken stop)
    {
        db.Retests.Add(look);
        await messages.Write(
            new DueMessage
            {
                Kind = look.IsSecondLook ? MessageKind.SecondLook : MessageKind.RetestPrompt,
                StudentId = look.StudentId,
                PlanId = look.PlanId,
                SubjectId = look.Id,
                DueAt = dates.Morning(look.DueOn),
                Reason = $"{reason} {look.Fault}",
                Occasion = LocalDatePattern.Iso.Format(look.DueOn),
            },
            stop);
    }

    private async Task MoveTo(Retest look, LocalDate day, FollowUpDates dates, CancellationToken stop)
    {
        look.MoveTo(day);
        await messages.MoveAbout(look.Id, dates.Morning(day), stop);
    }

    private async Task EndLooks(Expression<Func<Retest, bool>> which, string why, CancellationToken stop)
    {
        foreach (var look in await db.Retests.Where(which).Where(r => r.Status == RetestStatus.Ready).ToListAsync(stop))
        {
            look.Cancel(days.Now);
            await messages.EndAbout(look.Id, why, stop);
        }
    }
}
