using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Plans;

namespace CoachOffice.Web.Features.Plans.Story;

/// <summary>Lays a plan's rungs out by what they work on, the draft's first focus first.</summary>
internal sealed class WorkCards(DraftStory story, IReadOnlyList<StageView> stages, IReadOnlyList<PlanEdit> edits)
{
    public IReadOnlyList<WorkCard> All() =>
        [.. stages.GroupBy(s => s.Fault).OrderBy(g => Place(g.Key)).ThenBy(g => g.Min(s => s.Order)).Select(g => Card(g.Key, [.. g.OrderBy(s => s.Order)]))];

    private int Place(FaultId fault) => story.Draft.Focus.FirstOrDefault(f => f.Fault == fault)?.Order ?? int.MaxValue;

    private WorkCard Card(FaultId fault, List<StageView> rungs)
    {
        var focus = story.Draft.Focus.FirstOrDefault(f => f.Fault == fault);
        return new WorkCard
        {
            Focus = focus,
            Fault = fault,
            Name = rungs[0].FaultName,
            Rungs = [.. rungs.Select((stage, place) => Rung(stage, place > 0, place < rungs.Count - 1))],
        };
    }

    private WorkRung Rung(StageView stage, bool hasEarlier, bool hasLater) => new()
    {
        Stage = stage,
        Drills = [.. stage.Drills.Select(d => Line(d, stage))],
        Edits = [.. edits.Where(e => e.What == $"stage:{stage.Order}" || e.What.StartsWith($"stage:{stage.Order}/", StringComparison.Ordinal))],
        Gate = GateText.Of(stage.Gate, story.Book, story.Units),
        Dosage = story.Book.Dosage.Stages.FirstOrDefault(d => d.Stage == stage.Stage),
        HasEarlier = hasEarlier,
        HasLater = hasLater,
    };

    private WorkDrill Line(PlanDrill drill, StageView stage)
    {
        var inBook = story.Book.Find(DrillId.From(drill.Drill));
        return new WorkDrill
        {
            Drill = drill,
            Stage = stage,
            Loads = inBook is null ? [] : [.. inBook.Loads.Select(l => Terms.Of(l.Region).Replace('-', ' '))],
            Source = inBook?.Source.Text ?? "",
        };
    }
}
