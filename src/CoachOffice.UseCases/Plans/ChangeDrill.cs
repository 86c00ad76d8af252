using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Plans;

/// <summary>Changes a drill's counts or cue; what stood there before is kept beside it.</summary>
public sealed class ChangeDrill(OfficeDb db, PlanEdits edits, PlanDoor door)
{
    /// <summary>The plan's id, or everything that is wrong with the counts.</summary>
    public Task<Outcome<PlanId>> In(EditOf edit, string drill, DrillCounts counts, Actor actor, CancellationToken stop = default) =>
        edits.Stage(edit, actor, (plan, stage) => Change(new StageChange(edit, plan, stage, actor), drill, counts, stop), stop);

    private async Task<IReadOnlyList<Refusal>> Change(StageChange at, string drill, DrillCounts counts, CancellationToken stop)
    {
        var old = at.Stage.Drills.FirstOrDefault(d => d.Drill == drill);
        if (old is null) return [new("drill-not-found", "There is no such drill in this stage.")];
        var student = await db.Students.AsNoTracking().SingleAsync(s => s.Id == at.Plan.StudentId, stop);
        var wrong = WeekCheck.Of(counts, student, await door.Today(stop)).ToList();
        var fresh = old with
        {
            Sets = counts.Sets,
            Reps = counts.Reps,
            SessionsPerWeek = counts.SessionsPerWeek,
            MinutesPerSession = counts.MinutesPerSession,
            Cue = counts.Cue.Trim(),
        };
        var drills = at.Stage.Drills.Select(d => d == old ? fresh : d).ToList();
        if (WeekCheck.Minutes(at.Plan, at.Stage, drills, student) is { } tooMuch) wrong.Add(tooMuch);
        if (wrong.Count > 0) return wrong;
        Keep(at, old, fresh);
        at.Stage.Rewrite(drills, at.Stage.Gate);
        return [];
    }

    private void Keep(StageChange at, PlanDrill old, PlanDrill fresh)
    {
        var place = PlanEdits.Place(at.Stage, old.Drill);
        edits.Keep(at.Edit, at.Actor, $"{place}/sets", $"{old.Sets}", $"{fresh.Sets}");
        edits.Keep(at.Edit, at.Actor, $"{place}/reps", $"{old.Reps}", $"{fresh.Reps}");
        edits.Keep(at.Edit, at.Actor, $"{place}/sessions-per-week", $"{old.SessionsPerWeek}", $"{fresh.SessionsPerWeek}");
        edits.Keep(at.Edit, at.Actor, $"{place}/minutes-per-session", $"{old.MinutesPerSession}", $"{fresh.MinutesPerSession}");
        edits.Keep(at.Edit, at.Actor, $"{place}/cue", old.Cue, fresh.Cue);
    }
}
