using CoachOffice.UseCases.FollowUps;

namespace CoachOffice.UseCases.Lessons.Reviews;

/// <summary>What a letter about a remote review may speak of.</summary>
public sealed record ReviewLetterFacts : OfficeLetterFacts
{
    /// <summary>The club, in words.</summary>
    public required string Club { get; init; }

    /// <summary>Day and time of the promise, written out with the zone's name.</summary>
    public required string Promised { get; init; }

    /// <summary>Whoever has it, or could; empty where nobody does any more.</summary>
    public string Coach { get; init; } = "";

    /// <summary>The student's own page, or the coach's queue.</summary>
    public required string Link { get; init; }
}
