namespace CoachOffice.Domain.FollowUps;

/// <summary>Where a message stands.</summary>
public enum MessageState
{
    Waiting,

    /// <summary>Written and complete; a coach has to say yes before it goes.</summary>
    AwaitsApproval,
    Held,
    Sent,
    Skipped,
    NeedsAttention,

    /// <summary>It was on its way when the connection or the program broke off: it may have arrived, and a person decides whether it goes again.</summary>
    Unknown,
}
