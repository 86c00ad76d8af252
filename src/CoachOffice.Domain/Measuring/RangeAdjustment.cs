using CoachOffice.Domain.Students;

namespace CoachOffice.Domain.Measuring;

/// <summary>A shift of one range's edges for students of some age and older, or of some levels, in the measure's unit.</summary>
public sealed record RangeAdjustment
{
    /// <summary>The measure whose range moves.</summary>
    public required MeasureId Measure { get; init; }

    /// <summary>From this age on (years); 0 for every age.</summary>
    public required int FromAge { get; init; }

    /// <summary>For these levels only; null for all.</summary>
    public IReadOnlyList<Level>? Levels { get; init; }

    /// <summary>Added to the low edge.</summary>
    public double LowBy { get; init; }

    /// <summary>Added to the high edge.</summary>
    public double HighBy { get; init; }

    /// <summary>Where it comes from.</summary>
    public required SourceMark Source { get; init; }
}
