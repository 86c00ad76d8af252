namespace CoachOffice.UseCases.FollowUps;

/// <summary>What every letter without a plan may speak of; each family adds its own. Texts of people are cleaned before they get here; templates know the names in snake case.</summary>
public abstract record OfficeLetterFacts
{
    /// <summary>Who reads it.</summary>
    public required string Greeting { get; init; }

    public required string Practice { get; init; }

    /// <summary>The student's given name; empty where it is about no single student.</summary>
    public string Student { get; init; } = "";

    /// <summary>Where messages of this purpose are stopped; empty where they cannot be.</summary>
    public string StopLink { get; init; } = "";

    /// <summary>True when a guardian reads it.</summary>
    public bool ForGuardian { get; init; }

    /// <summary>True when its link opens the student's own lessons without a password.</summary>
    public bool OpensLessons { get; init; }

    /// <summary>Where the reader says that the student is coming; only in a reminder.</summary>
    public string ComingLink { get; init; } = "";
}
