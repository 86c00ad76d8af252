namespace CoachOffice.Domain.FollowUps;

/// <summary>What a kind of message is for, in the eyes of who reads it.</summary>
public enum MessagePurpose
{
    /// <summary>Lessons and remote reviews: agreed with the reader.</summary>
    Appointment,

    /// <summary>The plan itself and the readings it asks for.</summary>
    Plan,

    /// <summary>Words about practice nobody asked for: rarely, never to minors, less when unanswered.</summary>
    Encouragement,

    /// <summary>Receipts, statements, packages, what is owed.</summary>
    Money,

    /// <summary>To a coach.</summary>
    Office,
}
