using CoachOffice.UseCases.FollowUps;

namespace CoachOffice.UseCases.Ledger.Packages;

/// <summary>What a letter about a package may speak of.</summary>
public sealed record PackageLetterFacts : OfficeLetterFacts
{
    /// <summary>Its name.</summary>
    public required string Package { get; init; }

    /// <summary>Its last day, written out; empty when the letter is about the last lesson in it.</summary>
    public string LastDay { get; init; } = "";

    /// <summary>How many lessons nobody has booked, in words: "One lesson", "3 lessons".</summary>
    public required string Left { get; init; }

    /// <summary>The same as a number.</summary>
    public required int LeftCount { get; init; }

    /// <summary>The page with the student's own lessons and free times.</summary>
    public required string Link { get; init; }
}
