namespace CoachOffice.Domain.Measuring;

/// <summary>A shift of one range's edges for students of some age and older, in the measure's unit.</summary>
public sealed record RangeAdjustment
{
    /// <summary>The measure whose range moves.</summary>
    public required MeasureId Measure { get; init; }

    /// <summary>From this age on (years).</summary>
    public required int FromAge { get; init; }

    /// <summary>Added to the low edge.</summary>
    public double LowBy { get; init; }

    /// <summary>Added to the high edge.</summary>
    public double HighBy { get; init; }

    /// <summary>Where it comes from.</summary>
    public required SourceMark Source { get; init; }
}
