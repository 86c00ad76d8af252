using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Plans;

/// <summary>A plan's rungs as a coach sees them.</summary>
internal static class StageViews
{
    /// <summary>By order; with the drills that could stand in each rung when a draft is given.</summary>
    public static IReadOnlyList<StageView> Of(Plan plan, Book book, Draft? draft) =>
        [.. plan.Stages.Select(s => new StageView
        {
            Id = s.Id,
            Order = s.Order,
            Fault = s.Content.Fault,
            FaultName = FaultWords.Of(book, s.Content.Fault),
            Stage = s.Stage,
            Status = s.Status,
            Drills = s.Drills,
            Gate = s.Gate,
            StartedOn = s.StartedOn,
            DueOn = s.DueOn,
            EndedOn = s.EndedOn,
            LookUpChoices = draft is null ? static () => [] : () => Choices(s, book, draft),
        })];

    private static IReadOnlyList<DrillChoice> Choices(PlanStage stage, Book book, Draft draft)
    {
        var fault = stage.Content.Fault;
        var serving = book.Drills.Where(d => d.Stages.Contains(stage.Stage) && (d.Trains.Count == 0 || d.Trains.Contains(fault)) && stage.Drills.All(s => s.Drill != d.Id.Value));
        return [.. serving.Select(d => new DrillChoice(d.Id.Value, d.Name, draft.Withheld.FirstOrDefault(w => w.Drill == d.Id.Value)?.Reason))];
    }
}
