namespace CoachOffice.Domain.FollowUps;

/// <summary>What a message is for.</summary>
public enum MessageKind
{
    PlanDelivery,
    PracticeNudge,
    RetestPrompt,
    SecondLook,
}
