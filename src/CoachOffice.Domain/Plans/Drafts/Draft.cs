namespace CoachOffice.Domain.Plans.Drafts;

/// <summary>A plan as the rulebook proposes it, with every reason. Immutable; it has one written form only.</summary>
public sealed record Draft
{
    public required DraftRulebook Rulebook { get; init; }

    /// <summary><c>drafter/N</c>; N is raised by hand whenever a draft may change.</summary>
    public required string Engine { get; init; }

    /// <summary>SHA-256 (lower hex) of the canonical input.</summary>
    public required string Input { get; init; }

    /// <summary>Every reading held against its range, by row of the measure.</summary>
    public required IReadOnlyList<DraftFinding> Findings { get; init; }

    /// <summary>Patterns that fired and stand, by precedence, then id.</summary>
    public required IReadOnlyList<DraftCause> Causes { get; init; }

    /// <summary>None, one or two faults to work on.</summary>
    public required IReadOnlyList<DraftFocus> Focus { get; init; }

    public required IReadOnlyList<DraftParked> Parked { get; init; }

    /// <summary>The first focus's ladder first.</summary>
    public required IReadOnlyList<DraftStage> Stages { get; init; }

    public required IReadOnlyList<DraftWithheld> Withheld { get; init; }

    public required IReadOnlyList<DraftMeasureNext> MeasureNext { get; init; }

    /// <summary>Ids of measures clearly in range.</summary>
    public required IReadOnlyList<string> Strengths { get; init; }

    public required IReadOnlyList<DraftCaution> Cautions { get; init; }

    /// <summary>What fired and how the order was found, step by step.</summary>
    public required IReadOnlyList<DraftTrace> Trace { get; init; }
}
