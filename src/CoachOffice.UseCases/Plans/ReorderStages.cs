using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Plans;

/// <summary>Puts a draft's rungs into another order.</summary>
public sealed class ReorderStages(PlanEdits edits, PlanBooks books)
{
    /// <summary>The plan's id, or why not.</summary>
    public Task<Outcome<PlanId>> As(EditOf edit, IReadOnlyList<Guid> order, Actor actor, CancellationToken stop = default) =>
        edits.Whole(edit, actor, plan => Reorder(plan, edit, order, actor, stop), stop);

    private async Task<IReadOnlyList<Refusal>> Reorder(Plan plan, EditOf edit, IReadOnlyList<Guid> order, Actor actor, CancellationToken stop)
    {
        if (plan.Status != PlanStatus.Draft) return [new("plan-not-draft", "The order can change until the plan is approved; after that, pass or leave stages.")];
        if (order.Count != plan.Stages.Count || !order.ToHashSet().SetEquals(plan.Stages.Select(s => s.Id)))
            return [new("stage-order", "Name each stage of the plan once, first to last.")];
        var book = await books.Of(plan.DraftId, stop);
        var before = Line(plan, book);
        plan.Reorder(order);
        edits.Keep(edit, actor, "order", before, Line(plan, book));
        return [];
    }

    private static string Line(Plan plan, Book book) =>
        string.Join("; ", plan.Stages.Select(s => $"{FaultWords.Measure(book, s.Content.Fault)}: {Terms.Of(s.Stage)}"));
}
