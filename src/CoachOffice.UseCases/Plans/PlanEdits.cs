using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;

namespace CoachOffice.UseCases.Plans;

/// <summary>A coach's changes of a plan, each kept with what stood there before.</summary>
public sealed class PlanEdits(OfficeDb db, PlanDoor door)
{
    private const int LongestComment = 1000;

    /// <summary>Changes one rung inside one transaction.</summary>
    public Task<Outcome<PlanId>> Stage(EditOf edit, Actor actor, Func<Plan, PlanStage, Task<IReadOnlyList<Refusal>>> change, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(edit);
        return Whole(edit, actor, plan => OfStage(plan, edit, change), stop);
    }

    /// <summary>Changes the plan as a whole inside one transaction.</summary>
    public Task<Outcome<PlanId>> Whole(EditOf edit, Actor actor, Func<Plan, Task<IReadOnlyList<Refusal>>> change, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(edit);
        ArgumentNullException.ThrowIfNull(change);
        var deed = new PlanDeed { Plan = edit.Plan, Version = edit.Version, Actor = actor, Action = "plan-edited", Doing = "change plans", Detail = $"reason:{Terms.Of(edit.Reason)}" };
        return door.Change(deed, plan => Against(plan, edit) is { } against ? Task.FromResult<IReadOnlyList<Refusal>>([against]) : change(plan), stop);
    }

    /// <summary>Keeps what was changed, and why.</summary>
    /// <param name="edit">Where and why.</param>
    /// <param name="actor">Who.</param>
    /// <param name="what">E.g. <c>stage:2/drill:shadow-head/reps</c>.</param>
    /// <param name="original">Before, as shown.</param>
    /// <param name="changed">After, as shown; empty when removed.</param>
    public void Keep(EditOf edit, Actor actor, string what, string original, string changed)
    {
        ArgumentNullException.ThrowIfNull(edit);
        ArgumentNullException.ThrowIfNull(actor);
        if (original == changed) return;
        db.PlanEdits.Add(new PlanEdit
        {
            Id = door.NewId(),
            PlanId = edit.Plan,
            What = what,
            Original = original,
            Changed = changed,
            Reason = edit.Reason,
            Comment = edit.Comment.Trim(),
            At = door.Now,
            By = actor.Name,
        });
    }

    /// <summary>Oldest first; changes of one moment by what they changed.</summary>
    public static IReadOnlyList<PlanEdit> InOrder(IEnumerable<PlanEdit> edits) => [.. edits.OrderBy(e => e.At).ThenBy(e => e.What, StringComparer.Ordinal).ThenBy(e => e.Id)];

    /// <summary>Where a drill stands, for the row that keeps its change.</summary>
    public static string Place(PlanStage stage, string drill)
    {
        ArgumentNullException.ThrowIfNull(stage);
        return $"stage:{stage.Order}/drill:{drill}";
    }

    private static Refusal? Against(Plan plan, EditOf edit) =>
        plan.Status is not (PlanStatus.Draft or PlanStatus.Active or PlanStatus.OnHold) ? new("plan-ended", $"This plan is {Terms.Of(plan.Status)}; it cannot be changed any more.")
        : !Enum.IsDefined(edit.Reason) ? new("reason-needed", "Pick a reason for the change.", nameof(edit.Reason))
        : edit.Comment.Length > LongestComment ? new("comment-too-long", "A comment holds up to 1000 characters.", nameof(edit.Comment))
        : null;

    private static Task<IReadOnlyList<Refusal>> OfStage(Plan plan, EditOf edit, Func<Plan, PlanStage, Task<IReadOnlyList<Refusal>>> change)
    {
        var stage = plan.Stages.FirstOrDefault(s => s.Id == edit.StageId);
        Refusal? against = stage is null ? new("stage-not-found", "There is no such stage in this plan.")
            : stage.Status is StageStatus.Done or StageStatus.Skipped ? new("stage-over", "This stage is over; what was practised stays as it was.")
            : null;
        return against is null ? change(plan, stage!) : Task.FromResult<IReadOnlyList<Refusal>>([against]);
    }
}
