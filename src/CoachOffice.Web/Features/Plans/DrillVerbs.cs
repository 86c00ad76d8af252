using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Plans;

namespace CoachOffice.Web.Features.Plans;

/// <summary>What a coach does to the drills and the words of a plan.</summary>
internal sealed class DrillVerbs(ChangeDrill change, RemoveDrill remove, SwapDrill swap, WritePlanMessage write, StageOrder order)
{
    public PlanVerb? Named(string? step) => step switch
    {
        "drill" => new("Your change is kept beside the draft's own.", Change),
        "remove" => new("The drill is out; the draft's own stays beside it.", Remove),
        "swap" => new("The other drill stands in its place.", Swap),
        "order" => new("The stages stand in your order.", order.Move),
        "message" => new("Your words are kept on top of the plan.", Write),
        _ => null,
    };

    private async Task<IReadOnlyList<Refusal>> Change(PlanId plan, PlanPost post, Actor actor)
    {
        var (edit, counts) = (post.Edit(plan), post.Counts());
        if (!edit.Succeeded || !counts.Succeeded) return [.. edit.Refusals, .. counts.Refusals];
        return (await change.In(edit.Value, post.Drill ?? "", counts.Value, actor)).Refusals;
    }

    private async Task<IReadOnlyList<Refusal>> Remove(PlanId plan, PlanPost post, Actor actor) =>
        post.Edit(plan).TryGet(out var edit) ? (await remove.From(edit, post.Drill ?? "", actor)).Refusals : post.Edit(plan).Refusals;

    private async Task<IReadOnlyList<Refusal>> Swap(PlanId plan, PlanPost post, Actor actor) =>
        post.Edit(plan).TryGet(out var edit) ? (await swap.For(edit, post.Drill ?? "", post.Other ?? "", actor)).Refusals : post.Edit(plan).Refusals;

    private async Task<IReadOnlyList<Refusal>> Write(PlanId plan, PlanPost post, Actor actor) =>
        (await write.On(plan, post.Version, post.Message ?? "", actor)).Refusals;
}
