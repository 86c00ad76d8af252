using CoachOffice.Domain.Lessons;

namespace CoachOffice.UseCases.Lessons;

/// <summary>The whole sheet as posted: saved together or not at all.</summary>
public sealed record LessonForm
{
    public required LessonHeading Heading { get; init; }

    /// <summary>One entry per measure; empty ones are not measured.</summary>
    public IReadOnlyList<MeasureEntry> Entries { get; init; } = [];

    public string Observations { get; init; } = "";

    public string Notes { get; init; } = "";
}
