namespace CoachOffice.Domain.FollowUps;

/// <summary>The purpose of each kind of message, and what a stop of it ends. Pure; the compiler refuses a kind that is not decided upon.</summary>
public static class MessagePurposes
{
    /// <summary>Purposes a student may stop, in the order they are shown.</summary>
    public static IReadOnlyList<MessagePurpose> OfStudents { get; } = [MessagePurpose.Encouragement, MessagePurpose.Appointment, MessagePurpose.Plan, MessagePurpose.Money];

    // A new kind without a purpose is an error of the build (CS8509); numbers that are no kind (CS8524) do not come from our own columns.
#pragma warning disable CS8524
    /// <summary>What a kind is for.</summary>
    public static MessagePurpose Of(MessageKind kind) => kind switch
    {
        MessageKind.BookingInvitation or MessageKind.BookingCancelled or MessageKind.WaitingOffer or MessageKind.LessonReminder => MessagePurpose.Appointment,
        MessageKind.PlanDelivery or MessageKind.ReviewReceived or MessageKind.ReviewLate => MessagePurpose.Plan,
        MessageKind.PracticeNudge or MessageKind.RetestPrompt or MessageKind.SecondLook or MessageKind.WeeklyCheckIn => MessagePurpose.Encouragement,
        MessageKind.Receipt or MessageKind.Statement or MessageKind.PackageEnding or MessageKind.PaymentDue => MessagePurpose.Money,
        MessageKind.ReviewDue or MessageKind.MorningList => MessagePurpose.Office,
    };
#pragma warning restore CS8524

    /// <summary>
    /// Whether a stop of its purpose ends this kind. What answers a deed of the person stays: who books is told that it is booked, who pays gets the receipt, and a
    /// lesson that is called off is never kept from who would come.
    /// </summary>
    public static bool MayBeStopped(MessageKind kind) =>
        Of(kind) != MessagePurpose.Office
        && kind is not (MessageKind.BookingInvitation or MessageKind.BookingCancelled or MessageKind.ReviewReceived or MessageKind.ReviewLate or MessageKind.Receipt or MessageKind.Statement);

    /// <summary>The kinds a stop of a purpose ends.</summary>
    public static IReadOnlyList<MessageKind> EndedBy(MessagePurpose purpose) => [.. Enum.GetValues<MessageKind>().Where(k => Of(k) == purpose && MayBeStopped(k))];
}
