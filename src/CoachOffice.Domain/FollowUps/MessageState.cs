namespace CoachOffice.Domain.FollowUps;

/// <summary>Where a message stands.</summary>
public enum MessageState
{
    Waiting,
    Held,
    Sent,
    Skipped,
    NeedsAttention,
}
