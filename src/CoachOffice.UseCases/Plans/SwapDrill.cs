using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Plans;

/// <summary>Puts another drill of the plan's book in a drill's place, with the counts that stood there.</summary>
public sealed class SwapDrill(OfficeDb db, PlanEdits edits, PlanBooks books, PlanDoor door)
{
    /// <summary>The plan's id, or why not.</summary>
    public Task<Outcome<PlanId>> For(EditOf edit, string drill, string instead, Actor actor, CancellationToken stop = default) =>
        edits.Stage(edit, actor, (plan, stage) => Swap(new StageChange(edit, plan, stage, actor), drill, instead, stop), stop);

    private async Task<IReadOnlyList<Refusal>> Swap(StageChange at, string drill, string instead, CancellationToken stop)
    {
        var old = at.Stage.Drills.FirstOrDefault(d => d.Drill == drill);
        if (old is null) return [new("drill-not-found", "There is no such drill in this stage.")];
        var book = await books.Of(at.Plan.DraftId, stop);
        if (string.IsNullOrWhiteSpace(instead) || book.Find(DrillId.From(instead)) is not { } chosen)
            return [new("drill-not-known", $"The plan's rulebook has no drill '{instead}'; pick one from the list.", "Instead")];
        if (at.Stage.Drills.Any(d => d.Drill == instead)) return [new("drill-twice", $"'{chosen.Name}' is in this stage already.", "Instead")];
        var student = await db.Students.AsNoTracking().SingleAsync(s => s.Id == at.Plan.StudentId, stop);
        if (BodyCheck.Of(chosen, at.Stage.Stage, student, await door.Today(stop)) is { } withheld) return [withheld];
        var fresh = DraftStages.Instead(chosen, old);
        var drills = at.Stage.Drills.Select(d => d == old ? fresh : d).ToList();
        edits.Keep(at.Edit, at.Actor, PlanEdits.Place(at.Stage, drill), DrillText.Of(old), DrillText.Of(fresh));
        at.Stage.Rewrite(drills, DraftStages.Gate(at.Stage.Gate, at.Stage.Drills, drills, book));
        return [];
    }
}
