using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Drafting.Replay;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Wording;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Web.Features.Rulebook;

/// <summary>A part of a draft as a few short lines, to lay beside the same part of another.</summary>
internal static class WorkLines
{
    public static string Name(DraftSection section) => section switch
    {
        DraftSection.Focus => "Work on this",
        DraftSection.Parked => "Parked",
        DraftSection.Stages => "Drills",
        DraftSection.Withheld => "Withheld",
        _ => "Cautions",
    };

    public static IReadOnlyList<string> Of(DraftedWork? work, DraftSection section, Domain.Plans.Rulebook book)
    {
        if (work is null) return ["no draft: the lesson holds a measure this book lacks"];
        IReadOnlyList<string> lines = section switch
        {
            DraftSection.Focus => [.. work.Focus.Select(f => $"{MeasureWords.Of(f.Fault, book)}: {f.Because}")],
            DraftSection.Parked => [.. work.Parked.Select(p => $"{MeasureWords.Of(p.Fault, book)}: {PlanWords.Of(p.Reason)}{(p.By is { } by ? $" {MeasureWords.Of(by, book)}" : "")}")],
            DraftSection.Stages => [.. work.Stages.Select(s => $"{PlanWords.Of(s.Stage)}: {string.Join(", ", s.Drills.Select(d => $"{d.Name} {d.Sets} × {d.Reps}"))}; {s.Gate.Text}")],
            DraftSection.Withheld => [.. work.Withheld.Select(w => $"{book.Find(DrillId.From(w.Drill))?.Name ?? w.Drill}: {PlanWords.Of(w.Reason)}")],
            _ => [.. work.Cautions.Select(c => c.Text)],
        };
        return lines.Count == 0 ? ["nothing"] : lines;
    }
}
