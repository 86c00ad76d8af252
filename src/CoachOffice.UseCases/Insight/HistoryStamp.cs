using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Insight;

/// <summary>Says whether a student's measures are still those that were read: equal stamps, equal measures.</summary>
public sealed record HistoryStamp
{
    public required StudentId Student { get; init; }

    /// <summary>Saves of the student's details: hand, height, level and goal move bands.</summary>
    public required int Details { get; init; }

    /// <summary>Saves of all lessons together.</summary>
    public required int Lessons { get; init; }

    /// <summary>Saves of all re-tests together.</summary>
    public required int Looks { get; init; }

    /// <summary>Saves of all plans together.</summary>
    public required int Plans { get; init; }

    /// <summary>Hash of the book values are held against.</summary>
    public required string Book { get; init; }
}
