using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;

namespace CoachOffice.UseCases.Plans;

/// <summary>Takes a drill out of a rung; what stood there is kept.</summary>
public sealed class RemoveDrill(PlanEdits edits, PlanBooks books)
{
    /// <summary>The plan's id, or why not.</summary>
    public Task<Outcome<PlanId>> From(EditOf edit, string drill, Actor actor, CancellationToken stop = default) =>
        edits.Stage(edit, actor, (plan, stage) => Remove(new StageChange(edit, plan, stage, actor), drill, stop), stop);

    private async Task<IReadOnlyList<Refusal>> Remove(StageChange at, string drill, CancellationToken stop)
    {
        var old = at.Stage.Drills.FirstOrDefault(d => d.Drill == drill);
        if (old is null) return [new("drill-not-found", "There is no such drill in this stage.")];
        if (at.Stage.Drills.Count == 1) return [new("last-drill", "A stage needs a drill; put another in its place instead.")];
        var drills = at.Stage.Drills.Where(d => d != old).ToList();
        edits.Keep(at.Edit, at.Actor, PlanEdits.Place(at.Stage, drill), DrillText.Of(old), "");
        at.Stage.Rewrite(drills, DraftStages.Gate(at.Stage.Gate, at.Stage.Drills, drills, await books.Of(at.Plan.DraftId, stop)));
        return [];
    }
}
