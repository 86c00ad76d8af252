namespace CoachOffice.Domain.FollowUps;

/// <summary>One thing about words that does not leave the reader free.</summary>
/// <param name="Rule">What it goes against.</param>
/// <param name="Words">The words found; empty where something is missing.</param>
public sealed record WordingFault(WordingRule Rule, string Words)
{
    /// <summary>What is wrong and how to mend it.</summary>
    public string Sentence => Rule switch
    {
        WordingRule.Pressure => $"\"{Words}\" presses. Say what could be done and leave it open: \"you could\", \"one way is\", \"if it suits\".",
        WordingRule.Urgency => $"\"{Words}\" hurries the reader. Name the day or the hour instead and leave the rest to them.",
        WordingRule.Guilt => $"\"{Words}\" blames. Ask with interest instead: what was in the way, what would fit better.",
        WordingRule.Comparison => $"\"{Words}\" compares with other people. Speak of this student's own numbers only.",
        WordingRule.Chain => $"\"{Words}\" makes a chain of days that can only break. Speak of the next session instead.",
        WordingRule.Health => $"\"{Words}\" sounds like medicine. The program makes no claim about the body; leave it out.",
        WordingRule.Minor => $"\"{Words}\" makes a parent push a child. Tell them what is planned, and no more.",
        WordingRule.NoReason => "No reason is given. Say why you write, with \"because\" or \"so that\".",
        _ => "No choice is left. Say that it is the reader's to decide, with \"could\", \"may\" or \"your choice\".",
    };
}

/// <summary>A text as one reader gets it.</summary>
/// <param name="Text">Subject and body.</param>
/// <param name="ForGuardian">True when a minor's guardian reads it.</param>
public sealed record WordingReader(string Text, bool ForGuardian);

/// <summary>What words may go against.</summary>
public enum WordingRule
{
    /// <summary>Must, should, have to.</summary>
    Pressure,

    /// <summary>Hurry, last chance.</summary>
    Urgency,

    /// <summary>Disappointment, failure, missed sessions.</summary>
    Guilt,

    /// <summary>Other people as a measure.</summary>
    Comparison,

    /// <summary>Days in a row, points.</summary>
    Chain,

    /// <summary>Claims about the body.</summary>
    Health,

    /// <summary>A parent as the one who pushes.</summary>
    Minor,

    /// <summary>An encouragement without a reason.</summary>
    NoReason,

    /// <summary>An encouragement without a choice.</summary>
    NoChoice,
}
