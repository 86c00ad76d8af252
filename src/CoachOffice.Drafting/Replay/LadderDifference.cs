using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Replay;

/// <summary>For which faults two books offer other drills, or the same drills with other words, counts or cautions.</summary>
internal static class LadderDifference
{
    public static HashSet<FaultId> Of(Rulebook inForce, Rulebook edited)
    {
        var faults = inForce.Progressions.Concat(edited.Progressions).SelectMany(p => p.Faults).Distinct();
        return [.. faults.Where(f => Text(inForce, f) != Text(edited, f))];
    }

    private static string? Text(Rulebook book, FaultId fault) =>
        book.For(fault) is { } ladder ? string.Join('\n', ladder.Rungs.Select(r => $"{r.Stage}\n{string.Join('\n', r.Drills.Select(d => Text(book, d)))}")) : null;

    /// <summary>The steps and the source are printed beside a plan, not drafted.</summary>
    private static string Text(Rulebook book, DrillId id)
    {
        var drill = book.Find(id)!;
        var cautions = book.Cautions.Where(c => c.Occasion == CautionOccasion.Drill && drill.Cautions.Contains(c.Id));
        return $"{DefinitionText.Of(drill, nameof(Drill.Steps), nameof(Drill.Source))}\n{DefinitionText.OfAll(cautions)}";
    }
}
