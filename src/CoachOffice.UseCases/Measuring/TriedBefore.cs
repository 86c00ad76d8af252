using CoachOffice.Data;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Measuring;

/// <summary>Which drills a student has worked on and what came of it, for the next draft; a plan entered in error says nothing of them. What was not practised enough is not judged and left out.</summary>
public sealed class TriedBefore(OfficeDb db, PracticeDays days)
{
    /// <summary>By drill; the latest verdict counts.</summary>
    public async Task<IReadOnlyList<TriedDrill>> By(StudentId student, CancellationToken stop = default)
    {
        var plans = await db.Plans.AsNoTracking().Include(p => p.Stages).Where(p => p.StudentId == student && p.ApprovedAt != null && p.Status != PlanStatus.EnteredInError).ToListAsync(stop);
        var looks = await db.Retests.AsNoTracking().Where(r => r.StudentId == student && r.Status == RetestStatus.Completed).ToListAsync(stop);
        var notes = await db.CheckIns.AsNoTracking().Where(c => c.StudentId == student).ToListAsync(stop);
        var dates = await days.Dates(stop);
        var tried = new SortedDictionary<string, TriedDrill>(StringComparer.Ordinal);
        foreach (var look in looks.Where(l => l is { Verdict: not null, EndedAt: not null }).OrderBy(l => l.EndedAt).ThenBy(l => l.Id))
        {
            if (plans.SelectMany(p => p.Stages).FirstOrDefault(s => s.Id == look.StageId) is not { StartedOn: { } began } stage) continue;
            var work = Of(stage, began, look, [.. notes.Where(n => n.PlanId == look.PlanId)], dates);
            if (work.Outcome(look.Verdict!) is not { } outcome) continue;
            foreach (var drill in stage.Drills) tried[drill.Drill] = new TriedDrill(DrillId.From(drill.Drill), work.Sessions, outcome);
        }

        return [.. tried.Values];
    }

    /// <summary>The work on one rung until a re-test.</summary>
    internal static WorkOnStage Of(PlanStage stage, LocalDate began, Retest look, IReadOnlyList<CheckIn> notes, FollowUpDates dates)
    {
        var until = dates.DayOf(look.EndedAt!.Value);
        var end = stage.EndedOn is { } ended && ended < until ? ended : until;
        return WorkOnStage.Of(notes, began, end);
    }
}
