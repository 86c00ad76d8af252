using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Plans;

/// <summary>A cause a coach recognises in a set of findings: what must be there, what must not, which finding is the root and which are consequences.</summary>
public sealed record Pattern
{
    /// <summary>Stable id.</summary>
    public required PatternId Id { get; init; }

    /// <summary>Name for a person.</summary>
    public required string Name { get; init; }

    /// <summary>Where two patterns claim one finding the smaller precedence wins, then the id.</summary>
    public required int Precedence { get; init; }

    /// <summary>Clubs it speaks of; empty means all.</summary>
    public IReadOnlyList<Club> Clubs { get; init; } = [];

    /// <summary>All must hold; the findings among them at least mild and one at least moderate.</summary>
    public required IReadOnlyList<Condition> When { get; init; }

    /// <summary>Measures that must be measured and in range.</summary>
    public IReadOnlyList<MeasureId> Needs { get; init; } = [];

    /// <summary>None may hold; an unmeasured finding passes and raises a "measure next".</summary>
    public IReadOnlyList<Condition> Unless { get; init; } = [];

    /// <summary>The root: the first of these faults that is out in the lesson.</summary>
    public required IReadOnlyList<FaultId> Root { get; init; }

    /// <summary>Consequences, where they are out.</summary>
    public required IReadOnlyList<FaultId> Explains { get; init; }

    /// <summary>Further consequences, explained where present.</summary>
    public IReadOnlyList<FaultId> ExplainsIfPresent { get; init; } = [];

    /// <summary>Patterns it suppresses when they claim the same root or a consequence in common.</summary>
    public IReadOnlyList<PatternId> Over { get; init; } = [];

    /// <summary>Patterns whose roots are trained only after its own, while both stand.</summary>
    public IReadOnlyList<PatternId> Before { get; init; } = [];

    /// <summary>Faults whose drills may not be in the plan when it fires.</summary>
    public IReadOnlyList<FaultId> Forbids { get; init; } = [];

    /// <summary>What becomes of a fault it would explain while only readings are missing; null means that it waits.</summary>
    public UnreadReadings? Unread { get; init; }

    /// <summary>One sentence a coach would say to the student.</summary>
    public required string Because { get; init; }

    /// <summary>The reasoning, for another coach.</summary>
    public required string Rationale { get; init; }

    /// <summary>Said with a near-miss where the direction of cause is debatable; null otherwise.</summary>
    public string? Debatable { get; init; }

    /// <summary>Where it comes from.</summary>
    public required SourceMark Source { get; init; }
}
