namespace CoachOffice.UseCases.FollowUps;

/// <summary>What came of one claimed message.</summary>
public enum SendingResult
{
    Sent,
    PutOff,
    Skipped,
    TriedAgainLater,

    /// <summary>As <see cref="TriedAgainLater"/>, and no other message would fare better now.</summary>
    ServerDown,
    NeedsAttention,
}
