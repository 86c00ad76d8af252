using CoachOffice.Domain.Measuring;
using CoachOffice.Drafting.Patterns;

namespace CoachOffice.Drafting.Replay;

/// <summary>One lesson's findings by two books, as everything after the grading sees them.</summary>
internal sealed class FindingComparison
{
    public FindingComparison(LessonContext before, LessonContext after, MeasureDifference measures)
    {
        AreGradedElse = !before.Findings.Select(Grade).SequenceEqual(after.Findings.Select(Grade)) || !before.NoFault.SequenceEqual(after.NoFault);
        ReadElse = AreGradedElse || before.Findings.Any(f => measures.Redefined.Contains(f.Measure.Id));
        if (ReadElse) return;
        foreach (var (old, fresh) in before.Findings.Zip(after.Findings).Where(pair => pair.First.IsOut))
        {
            if (IsFurther(old, fresh) || measures.Remeasured.Contains(old.Measure.Id)) Shifted.Add(old.Fault!.Value);
        }
    }

    /// <summary>Another side or grade somewhere, other measures, or another order of them.</summary>
    public bool AreGradedElse { get; }

    /// <summary>Graded otherwise, or a measure that was read is defined otherwise.</summary>
    public bool ReadElse { get; }

    /// <summary>Faults that are out by the same grade, yet further or nearer, from another range, or read with another error: that orders a candidate and sets the gate of a focus, and nothing else reads it.</summary>
    public HashSet<FaultId> Shifted { get; } = [];

    // Not how far: nobody reads that of a value in range or at its edge.
    private static (MeasureId, Side, Grade, Quantity, int, bool, bool) Grade(Finding f) =>
        (f.Measure.Id, f.Side, f.Grade, f.Value, f.Readings, f.IsDerived, f.Range is null);

    private static bool IsFurther(Finding old, Finding fresh) => !old.OutsideBy.Equals(fresh.OutsideBy) || old.Step != fresh.Step || old.Range != fresh.Range;
}
