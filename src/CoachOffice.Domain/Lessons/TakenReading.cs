using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Lessons;

/// <summary>A reading as entered, already in the measure's own unit.</summary>
public sealed record TakenReading
{
    public required MeasureId Measure { get; init; }

    public required Quantity Value { get; init; }

    /// <summary>Which swing, from 1.</summary>
    public required int Swing { get; init; }

    /// <summary>From where the measure is read, which says the take it belongs to.</summary>
    public View View { get; init; }

    public Instrument Instrument { get; init; }

    public double? FrameRate { get; init; }
}
