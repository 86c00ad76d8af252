namespace CoachOffice.UseCases.Media;

/// <summary>How much may be kept: section <c>Office:Media</c>, in megabytes of a million bytes.</summary>
public sealed record MediaSettings
{
    private const long Million = 1_000_000;

    /// <summary>All stills and clips of the practice together.</summary>
    public long QuotaMegabytes { get; init; } = 20_000;

    /// <summary>One still as it comes in.</summary>
    public long LargestStillMegabytes { get; init; } = 25;

    /// <summary>One clip.</summary>
    public long LargestClipMegabytes { get; init; } = 500;

    /// <summary>The quota in bytes.</summary>
    public long Quota => QuotaMegabytes * Million;

    /// <summary>The largest still in bytes.</summary>
    public long LargestStill => LargestStillMegabytes * Million;

    /// <summary>The largest clip in bytes.</summary>
    public long LargestClip => LargestClipMegabytes * Million;
}
