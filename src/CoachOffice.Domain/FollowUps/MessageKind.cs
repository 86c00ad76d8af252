namespace CoachOffice.Domain.FollowUps;

/// <summary>What a message is for.</summary>
public enum MessageKind
{
    PlanDelivery,
    PracticeNudge,
    RetestPrompt,
    SecondLook,

    /// <summary>A lesson or a row of them is booked, or was moved.</summary>
    BookingInvitation,

    BookingCancelled,

    /// <summary>A freed place is kept for who waits.</summary>
    WaitingOffer,

    /// <summary>The receipt of a payment, to who paid.</summary>
    Receipt,

    /// <summary>What was charged and paid in a period, to who pays.</summary>
    Statement,

    /// <summary>A remote review came in; the promised day is told.</summary>
    ReviewReceived,

    /// <summary>To the coach: an answer is promised within a day.</summary>
    ReviewDue,

    /// <summary>A promised answer is late: an honest word to the student, once.</summary>
    ReviewLate,

    /// <summary>A lesson comes; the student may say "I am coming" or cancel.</summary>
    LessonReminder,

    /// <summary>A short question once a week while a plan runs and nothing was noted.</summary>
    WeeklyCheckIn,

    /// <summary>A package ends soon, or one lesson is left in it.</summary>
    PackageEnding,

    /// <summary>Something is owed longer than the practice's terms say.</summary>
    PaymentDue,

    /// <summary>To a coach who wants it: what the day holds.</summary>
    MorningList,
}
