using CoachOffice.UseCases.FollowUps;

namespace CoachOffice.UseCases.Insight;

/// <summary>What a coach's morning list may speak of; one line each.</summary>
public sealed record MorningLetterFacts : OfficeLetterFacts
{
    /// <summary>The day, written out.</summary>
    public required string Day { get; init; }

    /// <summary>Pain reports nobody has dealt with.</summary>
    public IReadOnlyList<string> Alerts { get; init; } = [];

    /// <summary>Lessons of the day, with who said that they are coming.</summary>
    public IReadOnlyList<string> Lessons { get; init; } = [];

    /// <summary>Remote reviews, by promise.</summary>
    public IReadOnlyList<string> Reviews { get; init; } = [];

    /// <summary>Drafts nobody has approved.</summary>
    public IReadOnlyList<string> Drafts { get; init; } = [];

    /// <summary>Numbers to read again.</summary>
    public IReadOnlyList<string> Retests { get; init; } = [];

    /// <summary>Messages that wait for a yes or need a look.</summary>
    public IReadOnlyList<string> Messages { get; init; } = [];

    /// <summary>The page of the day, behind the sign-in.</summary>
    public required string Link { get; init; }

    /// <summary>There is nothing to list.</summary>
    public bool IsEmpty => Alerts.Count + Lessons.Count + Reviews.Count + Drafts.Count + Retests.Count + Messages.Count == 0;
}
