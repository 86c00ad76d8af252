namespace CoachOffice.Domain.Measuring;

/// <summary>A verdict as it was given; numbers in the measure's unit.</summary>
public sealed record KeptVerdict
{
    public required Movement Movement { get; init; }

    public required Standing Standing { get; init; }

    public required double Before { get; init; }

    public required int BeforeReadings { get; init; }

    public required double After { get; init; }

    public required int AfterReadings { get; init; }

    public required double SmallestRealChange { get; init; }

    /// <summary>How many more readings would decide, when it cannot tell.</summary>
    public int? MoreReadings { get; init; }

    /// <summary>One sentence for coach and student.</summary>
    public required string Sentence { get; init; }
}
