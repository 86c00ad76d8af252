namespace CoachOffice.Domain.Measuring;

/// <summary>What a coach would leave alone if the ball flies well, for one measure and one club.</summary>
public sealed record WantedRange
{
    /// <summary>The measure.</summary>
    public required MeasureId Measure { get; init; }

    /// <summary>The club group.</summary>
    public required Club Club { get; init; }

    /// <summary>Edges in the measure's unit, inclusive; one end may be open.</summary>
    public required Limits Limits { get; init; }

    /// <summary>A narrower band to aim for inside the range, when the trade has one.</summary>
    public Limits? Aim { get; init; }

    /// <summary>True when the low edge is the student's own goal (speed); the numbers are then open.</summary>
    public bool FromGoal { get; init; }

    /// <summary>What is published around it and how sure we are, for a coach; null when nothing is said. It changes no grade.</summary>
    public string? Card { get; init; }

    /// <summary>Where it comes from.</summary>
    public required SourceMark Source { get; init; }
}
