using CoachOffice.Domain.FollowUps;

namespace CoachOffice.Web.Shell.Wording;

/// <summary>What messages are for, said to those who get them.</summary>
internal static class PurposeWords
{
    public static string Of(MessagePurpose purpose) => purpose switch
    {
        MessagePurpose.Appointment => "Reminders of lessons",
        MessagePurpose.Plan => "Plans by mail",
        MessagePurpose.Encouragement => "Words between lessons",
        MessagePurpose.Money => "Reminders about money",
        _ => "Messages to the practice",
    };

    /// <summary>What a stop ends.</summary>
    public static string Ends(MessagePurpose purpose) => purpose switch
    {
        MessagePurpose.Appointment => "Reminders before a lesson, and offers from the waiting list.",
        MessagePurpose.Plan => "The plan a coach approved. The coach then hands it over in another way.",
        MessagePurpose.Encouragement => "Words about practice, and notes that it is time to look again.",
        MessagePurpose.Money => "Notes that a payment is due or a package runs out.",
        _ => "",
    };

    /// <summary>What comes nevertheless.</summary>
    public const string StillComes = "What answers something you did still comes: that a lesson is booked, moved or called off, a receipt, and that clips arrived.";
}
