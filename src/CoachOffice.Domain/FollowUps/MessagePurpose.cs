namespace CoachOffice.Domain.FollowUps;

/// <summary>What messages are for, as the people who get them tell them apart: each may be stopped without the others.</summary>
public enum MessagePurpose
{
    /// <summary>Lessons: reminders, offers of free places, and what was booked or cancelled.</summary>
    Appointments,

    /// <summary>The plan a coach approved, and answers to what was sent in.</summary>
    Plan,

    /// <summary>Words between lessons: practice, and the day to look again.</summary>
    Encouragement,

    /// <summary>What was paid, is owed or runs out.</summary>
    Money,

    /// <summary>To the people of the practice itself.</summary>
    Office,
}
