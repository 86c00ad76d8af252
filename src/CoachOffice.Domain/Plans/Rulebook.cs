using System.Collections.Frozen;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;

namespace CoachOffice.Domain.Plans;

/// <summary>All a coach teaches by: measures, wanted ranges, patterns, drills, progressions, cautions. Immutable; every list is sorted by id (measures by row).</summary>
public sealed class Rulebook
{
    private FrozenDictionary<MeasureId, Measure>? _measureById;
    private FrozenDictionary<DrillId, Drill>? _drillById;
    private FrozenDictionary<PatternId, Pattern>? _patternById;
    private FrozenDictionary<(MeasureId, Club), WantedRange>? _rangeByClub;
    private FrozenDictionary<FaultId, Progression>? _progressionByFault;

    /// <summary>Name of the book.</summary>
    public required string Name { get; init; }

    /// <summary>Measures by row.</summary>
    public required IReadOnlyList<Measure> Measures { get; init; }

    /// <summary>Wanted ranges by measure row, then club.</summary>
    public required IReadOnlyList<WantedRange> Ranges { get; init; }

    /// <summary>Age rules.</summary>
    public required IReadOnlyList<RangeAdjustment> Adjustments { get; init; }

    /// <summary>Patterns by id.</summary>
    public required IReadOnlyList<Pattern> Patterns { get; init; }

    /// <summary>Laws of order by measure.</summary>
    public required IReadOnlyList<TrainAfter> TrainAfter { get; init; }

    /// <summary>What serves which goal.</summary>
    public required IReadOnlyList<GoalMeasures> Goals { get; init; }

    /// <summary>Drills by id.</summary>
    public required IReadOnlyList<Drill> Drills { get; init; }

    /// <summary>Progressions by id.</summary>
    public required IReadOnlyList<Progression> Progressions { get; init; }

    /// <summary>Cautions by id.</summary>
    public required IReadOnlyList<Caution> Cautions { get; init; }

    /// <summary>How drills are fitted into a week.</summary>
    public required Dosage Dosage { get; init; }

    /// <summary>The measure, or null.</summary>
    public Measure? Find(MeasureId id) => (_measureById ??= Measures.ToFrozenDictionary(m => m.Id)).GetValueOrDefault(id);

    /// <summary>The drill, or null.</summary>
    public Drill? Find(DrillId id) => (_drillById ??= Drills.ToFrozenDictionary(d => d.Id)).GetValueOrDefault(id);

    /// <summary>The pattern, or null.</summary>
    public Pattern? Find(PatternId id) => (_patternById ??= Patterns.ToFrozenDictionary(p => p.Id)).GetValueOrDefault(id);

    /// <summary>The progression that serves a fault, or null.</summary>
    public Progression? For(FaultId fault) =>
        (_progressionByFault ??= Progressions.SelectMany(p => p.Faults, (p, f) => (Fault: f, Progression: p)).DistinctBy(p => p.Fault).ToFrozenDictionary(p => p.Fault, p => p.Progression)).GetValueOrDefault(fault);

    /// <summary>The wanted range of a measure for a club, or null.</summary>
    public WantedRange? RangeOf(MeasureId measure, Club club) =>
        (_rangeByClub ??= Ranges.DistinctBy(r => (r.Measure, r.Club)).ToFrozenDictionary(r => (r.Measure, r.Club))).GetValueOrDefault((measure, club));
}
