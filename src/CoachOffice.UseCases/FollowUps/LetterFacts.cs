namespace CoachOffice.UseCases.FollowUps;

/// <summary>All that a letter may speak of; texts of people are cleaned before they get here. Known to the templates by these names in snake case.</summary>
public sealed record LetterFacts
{
    /// <summary>Who reads it.</summary>
    public required string Greeting { get; init; }

    /// <summary>The student's given name.</summary>
    public required string Student { get; init; }

    /// <summary>True when a guardian reads it.</summary>
    public required bool ForGuardian { get; init; }

    public required string Practice { get; init; }

    /// <summary>Who approved the plan.</summary>
    public required string Coach { get; init; }

    public required string EmergencyNumber { get; init; }

    /// <summary>The plan's private page.</summary>
    public required string Link { get; init; }

    /// <summary>Where reminders are stopped.</summary>
    public required string StopLink { get; init; }

    /// <summary>The lesson's day, written out.</summary>
    public required string LessonOn { get; init; }

    /// <summary>The day the number is read again, written out; empty when there is none.</summary>
    public string LookOn { get; init; } = "";

    /// <summary>The coach's words on top of the plan, by paragraph.</summary>
    public IReadOnlyList<string> Message { get; init; } = [];

    /// <summary>The student's own if-then sentence.</summary>
    public string IfThen { get; init; } = "";

    /// <summary>Why: one sentence per focus.</summary>
    public IReadOnlyList<string> Reasons { get; init; } = [];

    /// <summary>Drills of the rungs worked on now, one line each.</summary>
    public IReadOnlyList<string> Drills { get; init; } = [];

    /// <summary>What opens the next rungs, one line each.</summary>
    public IReadOnlyList<string> Gates { get; init; } = [];

    /// <summary>Names of the measures to read again.</summary>
    public IReadOnlyList<string> Measures { get; init; } = [];

    /// <summary>All cautions of the plan, in its delivery; reminders carry the short ones of the closing and name the page.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>Which wording, from 0: the same words wear off.</summary>
    public int Wording { get; init; }
}
