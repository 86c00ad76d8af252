namespace CoachOffice.Drafting.Replay;

/// <summary>The parts of a draft that count when asking whether two drafts differ.</summary>
public enum DraftSection
{
    /// <summary>What is worked on, why, and after what.</summary>
    Focus,

    /// <summary>What waits and why.</summary>
    Parked,

    /// <summary>Drills with their counts and gates.</summary>
    Stages,

    /// <summary>Drills not offered and why.</summary>
    Withheld,

    /// <summary>Sentences of safety and doubt.</summary>
    Cautions,
}
