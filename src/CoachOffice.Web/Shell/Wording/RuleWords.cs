using CoachOffice.Domain.FollowUps;

namespace CoachOffice.Web.Shell.Wording;

/// <summary>What a practice decides about its messages, said to a person.</summary>
internal static class RuleWords
{
    public static string Of(MessagePurpose purpose) => purpose switch
    {
        MessagePurpose.Appointment => "About lessons",
        MessagePurpose.Plan => "Plans and answers to clips",
        MessagePurpose.Encouragement => "Between lessons",
        MessagePurpose.Money => "About money",
        _ => "To coaches",
    };

    /// <summary>When it goes, in a sentence.</summary>
    public static string Timing(MessageRule rule)
    {
        var (number, traits) = (rule.Timing, MessageTraits.Of(rule.Kind));
        return traits.Unit switch
        {
            TimingUnit.HoursBefore => $"{Count(number, "hour")} before the lesson",
            TimingUnit.HoursAfter => $"{Count(number, "hour")} after the promise passed, once",
            TimingUnit.DaysBefore => $"{Count(number, "day")} before its last day, and when one lesson is left",
            TimingUnit.DaysAfter => $"{Count(number, "day")} after the day it was to be paid",
            TimingUnit.DaysBetween => $"every {Count(number, "day")} while a plan runs, unless a note has just come in",
            TimingUnit.HourOfDay => $"at {number:00}:00, to coaches who asked for it on their own page, when there is something",
            _ => Cause(rule.Kind),
        };
    }

    /// <summary>The label of the number.</summary>
    public static string Label(TimingUnit unit) => unit switch
    {
        TimingUnit.HoursBefore => "Hours before the lesson",
        TimingUnit.HoursAfter => "Hours after the promise",
        TimingUnit.DaysBefore => "Days before the last day",
        TimingUnit.DaysAfter => "Days after the day to pay",
        TimingUnit.DaysBetween => "Days from one to the next",
        _ => "Hour of the day",
    };

    private static string Cause(MessageKind kind) => kind switch
    {
        MessageKind.PlanDelivery => "when you approve a plan",
        MessageKind.PracticeNudge => "when nothing was noted for longer than the student's own rhythm",
        MessageKind.RetestPrompt => "at the end of a stage, a day or more after the last practice",
        MessageKind.SecondLook => "one to two weeks after a verdict",
        MessageKind.BookingInvitation => "when a lesson is booked or moved",
        MessageKind.BookingCancelled => "when a lesson is cancelled",
        MessageKind.WaitingOffer => "when a place becomes free for somebody who waits",
        MessageKind.ReviewReceived => "when clips come in",
        MessageKind.ReviewDue => "a day before a promised answer",
        _ => "when you press for it",
    };

    private static string Count(int number, string thing) => number == 1 ? $"1 {thing}" : $"{number} {thing}s";
}
