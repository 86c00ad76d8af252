namespace CoachOffice.Domain.Measuring;

/// <summary>The mean of n readings of different swings of one measure in one lesson.</summary>
public sealed record MeasuredValue
{
    /// <summary>What was measured.</summary>
    public required MeasureId Measure { get; init; }

    /// <summary>The mean, in the measure's own unit.</summary>
    public required Quantity Value { get; init; }

    /// <summary>How many different swings it is the mean of; at least 1.</summary>
    public int Readings { get; init; } = 1;

    /// <summary>What it was taken with.</summary>
    public Instrument Instrument { get; init; } = Instrument.Video;

    /// <summary>Frames per second, when taken from video and known.</summary>
    public double? FrameRate { get; init; }
}
