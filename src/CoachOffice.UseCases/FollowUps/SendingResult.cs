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

    /// <summary>As many as the server takes in a minute have gone; this one was not tried.</summary>
    RateReached,
}
