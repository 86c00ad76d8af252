using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Plans;

namespace CoachOffice.Web.Features.Plans;

/// <summary>Moves a stage past its neighbour on the same ladder.</summary>
internal sealed class StageOrder(DraftPage draft, ReorderStages reorder)
{
    public async Task<IReadOnlyList<Refusal>> Move(PlanId plan, PlanPost post, Actor actor)
    {
        if (!post.Edit(plan).TryGet(out var edit)) return post.Edit(plan).Refusals;
        if (await draft.Of(plan) is not { } view) return [new("plan-not-found", "There is no such plan.")];
        return Moved(view.Stages, post) is { } order ? (await reorder.As(edit, order, actor)).Refusals : [new("stage-not-found", "That stage is not on the plan.")];
    }

    private static List<Guid>? Moved(IReadOnlyList<StageView> stages, PlanPost post)
    {
        var order = stages.OrderBy(s => s.Order).ToList();
        var stage = order.Find(s => s.Id == post.StageId);
        var ladder = order.Where(s => s.Fault == stage?.Fault).ToList();
        var place = ladder.IndexOf(stage!) + (post.Way == "earlier" ? -1 : 1);
        if (stage is null || place < 0 || place >= ladder.Count) return null;
        var ids = order.ConvertAll(s => s.Id);
        var (from, to) = (ids.IndexOf(stage.Id), ids.IndexOf(ladder[place].Id));
        (ids[from], ids[to]) = (ids[to], ids[from]);
        return ids;
    }
}
