using CoachOffice.Domain.Measuring;

namespace CoachOffice.UseCases.Lessons;

/// <summary>What stands in one field of the lesson sheet, as typed.</summary>
public sealed record MeasureEntry
{
    /// <summary>Id of the measure.</summary>
    public required string Measure { get; init; }

    /// <summary>One value per swing, such as <c>14 15,5 13</c>; empty means not measured.</summary>
    public string Text { get; init; } = "";

    /// <summary>Unit shown in the field; null means the measure's own.</summary>
    public string? Unit { get; init; }

    /// <summary>True when the numbers are a line's angle from the ground on the target side (102 is a tilt of 12 away).</summary>
    public bool AsRead { get; init; }

    /// <summary>Null means the measure's usual instrument.</summary>
    public Instrument? Instrument { get; init; }

    /// <summary>Frames per second, as typed.</summary>
    public string FrameRate { get; init; } = "";
}
