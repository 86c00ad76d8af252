using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Plans.Drafts;

/// <summary>The book a draft was made by.</summary>
public sealed record DraftRulebook(string Name, string Sha256);

/// <summary>A value held against its range; numbers in the measure's unit.</summary>
public sealed record DraftFinding
{
    public required string Measure { get; init; }

    public required Side Side { get; init; }

    public required Grade Grade { get; init; }

    public required double Value { get; init; }

    public required string Unit { get; init; }

    public required double StandardError { get; init; }

    public double? RangeLow { get; init; }

    public double? RangeHigh { get; init; }

    public required double OutsideBy { get; init; }

    public required double ChanceOutside { get; init; }
}

/// <summary>A pattern that stands, its root and what it explains in this lesson.</summary>
public sealed record DraftCause(string Pattern, FaultId Root, IReadOnlyList<FaultId> Explains, string Because);

/// <summary>A fault to work on.</summary>
/// <param name="Order">1 or 2.</param>
/// <param name="Fault">The fault.</param>
/// <param name="Pattern">The pattern it is the root of, or null.</param>
/// <param name="Because">One sentence a coach would say.</param>
/// <param name="After">Faults that must be trained before it.</param>
public sealed record DraftFocus(int Order, FaultId Fault, string? Pattern, string Because, IReadOnlyList<FaultId> After);

/// <summary>A fault left for later.</summary>
public sealed record DraftParked(FaultId Fault, ParkedReason Reason, FaultId? By);

/// <summary>One rung for one fault.</summary>
public sealed record DraftStage(FaultId Fault, Stage Stage, IReadOnlyList<DraftDrill> Drills, DraftGate Gate);

/// <summary>A drill with its counts.</summary>
public sealed record DraftDrill
{
    public required string Drill { get; init; }

    public required string Name { get; init; }

    public required int Sets { get; init; }

    public required int Reps { get; init; }

    public required int SessionsPerWeek { get; init; }

    public required int MinutesPerSession { get; init; }

    public required string Cue { get; init; }
}

/// <summary>What opens the next stage.</summary>
public sealed record DraftGate
{
    public required GateKind Kind { get; init; }

    public string? Measure { get; init; }

    public double? AtLeast { get; init; }

    public double? AtMost { get; init; }

    public required int Readings { get; init; }

    public required string Text { get; init; }
}

/// <summary>A drill not offered, and why.</summary>
public sealed record DraftWithheld(string Drill, WithheldReason Reason, string Detail);

/// <summary>A reading that would decide something.</summary>
public sealed record DraftMeasureNext(string Measure, string Because);

/// <summary>A caution that goes out with the plan.</summary>
public sealed record DraftCaution(string Id, string Text);

/// <summary>One step of the reasoning: which rule, on which facts.</summary>
public sealed record DraftTrace(string Rule, IReadOnlyList<string> Facts);
