using CoachOffice.Domain.Lessons;

namespace CoachOffice.UseCases.Lessons;

/// <summary>The whole sheet as posted: saved together or not at all.</summary>
public sealed record LessonForm
{
    public required LessonHeading Heading { get; init; }

    /// <summary>The reading sheet it was read by; empty for every measure, null to leave it as it was.</summary>
    public string? Sheet { get; init; }

    /// <summary>The office's own id of the opened sheet: what comes twice under it was kept the first time.</summary>
    public Guid? Send { get; init; }

    /// <summary>One entry per measure; empty ones are not measured.</summary>
    public IReadOnlyList<MeasureEntry> Entries { get; init; } = [];

    public string Observations { get; init; } = "";

    public string Notes { get; init; } = "";
}
