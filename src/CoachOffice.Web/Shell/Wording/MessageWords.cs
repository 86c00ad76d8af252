using CoachOffice.Domain;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Web.Shell.Wording;

/// <summary>The closed word lists of messages, said to a person.</summary>
internal static class MessageWords
{
    public static string Of(MessageKind kind) => kind switch
    {
        MessageKind.PlanDelivery => "The plan",
        MessageKind.PracticeNudge => "A word of encouragement",
        MessageKind.RetestPrompt => "Time to look again",
        MessageKind.SecondLook => "A second look",
        MessageKind.BookingInvitation => "An invitation",
        MessageKind.BookingCancelled => "A cancellation",
        MessageKind.Receipt => "A receipt",
        MessageKind.Statement => "A statement",
        MessageKind.ReviewReceived => "The promise of an answer",
        MessageKind.ReviewDue => "A reminder of a promised answer",
        MessageKind.ReviewLate => "A word that an answer is late",
        MessageKind.LessonReminder => "A reminder of a lesson",
        MessageKind.WeeklyCheckIn => "The week's question",
        MessageKind.PackageEnding => "A package that ends",
        MessageKind.PaymentDue => "Something still to pay",
        MessageKind.MorningList => "A coach's morning list",
        _ => "An offer from the waiting list",
    };

    /// <summary>In a word or two, beside a number.</summary>
    public static string Short(MessageKind kind) => kind switch
    {
        MessageKind.PlanDelivery => "plan",
        MessageKind.PracticeNudge => "encouragement",
        MessageKind.RetestPrompt => "re-test",
        MessageKind.SecondLook => "second look",
        MessageKind.BookingInvitation => "invitation",
        MessageKind.BookingCancelled => "cancellation",
        MessageKind.Receipt => "receipt",
        MessageKind.Statement => "statement",
        MessageKind.ReviewReceived => "promise",
        MessageKind.ReviewDue => "answer due",
        MessageKind.ReviewLate => "late answer",
        MessageKind.LessonReminder => "lesson reminder",
        MessageKind.WeeklyCheckIn => "week's question",
        MessageKind.PackageEnding => "package",
        MessageKind.PaymentDue => "payment",
        MessageKind.MorningList => "morning list",
        _ => "waiting list",
    };

    public static string Of(MessageState state) => state switch
    {
        MessageState.Waiting => "waiting",
        MessageState.AwaitsApproval => "waits for your yes",
        MessageState.Held => "held",
        MessageState.Sent => "sent",
        MessageState.Skipped => "skipped",
        MessageState.Unknown => "may have arrived",
        _ => "needs attention",
    };

    /// <summary>Why a message was written; the coded causes are said in words.</summary>
    public static string Reason(string reason)
    {
        var words = reason.Split(' ', 2);
        if (words.Length < 2) return reason;
        if (words[0] == "plan-approved") return $"The plan was approved {words[1]}.";
        var what = FaultId.Find(words[1]) is { } fault ? $"{MeasureWords.Sentence(fault.Measure.Value).ToLowerInvariant()} is read again" : words[1];
        if (words[0].StartsWith("stage-end:", StringComparison.Ordinal) && Terms.TryParse<Stage>(words[0]["stage-end:".Length..], out var stage))
            return $"The stage \"{PlanWords.Of(stage)}\" ends: {what}.";
        return words[0].StartsWith("after-verdict:", StringComparison.Ordinal) ? $"One to two weeks after a verdict: {what}." : MeasureWords.Capital(reason) + ".";
    }

    /// <summary>A sign beside the word; never alone.</summary>
    public static string Sign(MessageState state) => state switch
    {
        MessageState.Waiting => "○",
        MessageState.AwaitsApproval => "?",
        MessageState.Held => "‖",
        MessageState.Sent => "✓",
        MessageState.Skipped => "–",
        MessageState.Unknown => "?",
        _ => "!",
    };
}
