namespace CoachOffice.Domain.Measuring;

/// <summary>A measured value held against the wanted range. A class on purpose: the rule engine tells facts apart by reference.</summary>
public sealed class Finding
{
    /// <summary>The measure.</summary>
    public required Measure Measure { get; init; }

    /// <summary>The value, in the measure's unit.</summary>
    public required Quantity Value { get; init; }

    /// <summary>How many swings it is the mean of.</summary>
    public required int Readings { get; init; }

    /// <summary>Standard error of the value, in the measure's unit.</summary>
    public required double StandardError { get; init; }

    /// <summary>The range it was held against (after stature, age and goal), or null when the club has none.</summary>
    public required Limits? Range { get; init; }

    /// <summary>The side it lies beyond; <see cref="Side.None"/> when inside or without a range.</summary>
    public required Side Side { get; init; }

    /// <summary>The grade.</summary>
    public required Grade Grade { get; init; }

    /// <summary>Distance beyond the edge, 0 when inside, in the measure's unit.</summary>
    public required double OutsideBy { get; init; }

    /// <summary>One step of severity as used (after stature), in the measure's unit; null when the measure has none.</summary>
    public required double? Step { get; init; }

    /// <summary>Chance that the true value lies outside, 0 to 1; 0 without a range.</summary>
    public required double ChanceOutside { get; init; }

    /// <summary>True when the value was computed from other measures, not read.</summary>
    public bool IsDerived { get; init; }

    /// <summary>Weight in the ordering: mild 1, moderate 2, marked 3, else 0.</summary>
    public int Weight => Grade switch { Grade.Mild => 1, Grade.Moderate => 2, Grade.Marked => 3, _ => 0 };

    /// <summary>Out of range by more than reading error: at least mild.</summary>
    public bool IsOut => Weight > 0;

    /// <summary>The fault, when it lies beyond an edge (borderline too).</summary>
    public FaultId? Fault => Side == Side.None ? null : new FaultId(Measure.Id, Side);
}
