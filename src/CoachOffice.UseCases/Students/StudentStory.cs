using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Students;

/// <summary>A student's page: who they are, what comes next, what happened.</summary>
public sealed record StudentStory
{
    public required Student Student { get; init; }

    /// <summary>Under 18 today: the guardian is the contact.</summary>
    public required bool IsMinor { get; init; }

    /// <summary>Completed years today, when the birth date is known.</summary>
    public required int? Age { get; init; }

    /// <summary>Null for an archived or erased student.</summary>
    public required NextStep? NextStep { get; init; }

    /// <summary>Newest first.</summary>
    public required IReadOnlyList<StoryItem> Items { get; init; }
}
