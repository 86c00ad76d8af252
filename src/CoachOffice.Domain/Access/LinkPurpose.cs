namespace CoachOffice.Domain.Access;

/// <summary>What the holder of a private link may do.</summary>
public enum LinkPurpose
{
    /// <summary>Read the plan and check in.</summary>
    Plan,

    /// <summary>Stop messages and ask for them again, nothing else.</summary>
    StopMessages,

    /// <summary>See, book, change and cancel the student's own lessons.</summary>
    Visits,
}
