namespace CoachOffice.Domain.Plans;

/// <summary>What opens the next stage of a plan.</summary>
public sealed record PlanGate
{
    public required GateKind Kind { get; init; }

    /// <summary>Id of the measure for a measure gate.</summary>
    public string? Measure { get; init; }

    public double? AtLeast { get; init; }

    public double? AtMost { get; init; }

    /// <summary>How many swings the deciding value needs.</summary>
    public int Readings { get; init; } = 1;

    public required string Text { get; init; }
}
