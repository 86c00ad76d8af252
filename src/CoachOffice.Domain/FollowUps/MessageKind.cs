namespace CoachOffice.Domain.FollowUps;

/// <summary>What a message is for.</summary>
public enum MessageKind
{
    PlanDelivery,
    PracticeNudge,
    RetestPrompt,
    SecondLook,

    /// <summary>A remote review came in; the promised day is told.</summary>
    ReviewReceived,

    /// <summary>To the coach: an answer is promised within a day.</summary>
    ReviewDue,
}
