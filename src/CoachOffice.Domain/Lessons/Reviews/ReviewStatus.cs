namespace CoachOffice.Domain.Lessons.Reviews;

/// <summary>Life of a remote review.</summary>
public enum ReviewStatus
{
    /// <summary>Sent in, nobody looks at it yet.</summary>
    Received,

    /// <summary>A coach has a lesson record of it.</summary>
    Opened,

    /// <summary>Its plan went out, or the coach said it is answered.</summary>
    Answered,

    /// <summary>The student or the practice took it back.</summary>
    Withdrawn,
}
