namespace CoachOffice.Domain.Lessons.Imports;

/// <summary>What a positive number of a device's column means. Right and left are seen by a player who looks at the target, and depend on the student's hand.</summary>
public enum PlusMeans
{
    /// <summary>The same as ours, the word of the measure.</summary>
    Ours,

    /// <summary>The other side: every number changes its sign.</summary>
    Opposite,

    /// <summary>To the right of the target: in-to-out or open for a right-handed student, out-to-in or closed for a left-handed one.</summary>
    Right,

    /// <summary>To the left of the target.</summary>
    Left,
}
