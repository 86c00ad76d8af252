using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Replay;

/// <summary>What two rulebooks define otherwise, as far as a draft's focus, parked faults, stages, withheld drills and cautions can depend on it. Texts for the reader alone (how to take a reading, sources, rationale) do not count.</summary>
public sealed class BookDifference
{
    private BookDifference(Rulebook inForce, Rulebook edited)
    {
        InMeasures = new MeasureDifference(inForce, edited);
        InRanges = RangeDifference.Of(inForce, edited);
        InPatterns = new PatternDifference(inForce, edited);
        InLadders = LadderDifference.Of(inForce, edited);
        InTrainAfter = new TrainAfterDifference(inForce, edited);
        InGoals = new GoalDifference(inForce, edited);
        InCautions = new CautionDifference(inForce, edited);
        Dosage = DosageDifference.Between(inForce.Dosage, edited.Dosage);
    }

    /// <summary>Measures defined otherwise, added or removed; ordinal.</summary>
    public IReadOnlyList<MeasureId> Measures => [.. InMeasures.Redefined.Union(InMeasures.Remeasured).OrderBy(m => m.Value, StringComparer.Ordinal)];

    /// <summary>Measures with another range or adjustment for some club; ordinal.</summary>
    public IReadOnlyList<MeasureId> Ranges => [.. InRanges.Select(r => r.Measure).Distinct().OrderBy(m => m.Value, StringComparer.Ordinal)];

    /// <summary>Patterns added, removed or changed; ordinal.</summary>
    public IReadOnlyList<PatternId> Patterns => [.. InPatterns.Changed.OrderBy(p => p.Value, StringComparer.Ordinal)];

    /// <summary>Faults with another ladder of drills, or with changed drills on it; ordinal.</summary>
    public IReadOnlyList<FaultId> Ladders => [.. InLadders.Order()];

    /// <summary>Measures whose work waits for other measures than before, or that serve other goals; ordinal.</summary>
    public IReadOnlyList<MeasureId> Order => [.. InTrainAfter.Work.Union(InGoals.Measures).OrderBy(m => m.Value, StringComparer.Ordinal)];

    /// <summary>Drills are given out in other amounts.</summary>
    public bool Dosage { get; }

    /// <summary>Cautions that no drill names differ.</summary>
    public bool Cautions => !InCautions.IsNothing;

    internal MeasureDifference InMeasures { get; }

    internal HashSet<(MeasureId Measure, Club Club)> InRanges { get; }

    internal PatternDifference InPatterns { get; }

    internal HashSet<FaultId> InLadders { get; }

    internal TrainAfterDifference InTrainAfter { get; }

    internal GoalDifference InGoals { get; }

    internal CautionDifference InCautions { get; }

    /// <summary>True when a lesson may be graded otherwise.</summary>
    internal bool TouchesGrading => !InMeasures.IsNothing || InRanges.Count > 0;

    /// <summary>The difference between the book in force and an edited one.</summary>
    public static BookDifference Of(Rulebook inForce, Rulebook edited)
    {
        ArgumentNullException.ThrowIfNull(inForce);
        ArgumentNullException.ThrowIfNull(edited);
        return new BookDifference(inForce, edited);
    }
}
