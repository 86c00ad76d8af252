using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Bookings.Mail;
using CoachOffice.UseCases.Insight;
using CoachOffice.UseCases.Ledger.Documents;
using CoachOffice.UseCases.Ledger.Packages;
using CoachOffice.UseCases.Ledger.Reports;
using CoachOffice.UseCases.Lessons.Reviews;

namespace CoachOffice.UseCases.FollowUps.Wordings;

/// <summary>Invented people and days for looking at letters: each kind as every sort of reader gets it.</summary>
public static class LetterExamples
{
    private const string Page = "https://lessons.example/v/an-invented-link";
    private const string Practice = "Hill Lane Golf Lessons";
    private const string Coach = "Robin Ashby";

    /// <summary>Of a kind; at least one.</summary>
    public static IReadOnlyList<LetterExample> Of(MessageKind kind) => kind switch
    {
        MessageKind.PlanDelivery or MessageKind.RetestPrompt or MessageKind.SecondLook => [Adult(Plan(false, 0)), Guardian(Plan(true, 0))],
        MessageKind.PracticeNudge or MessageKind.WeeklyCheckIn => [Adult(Plan(false, 0)), new("an adult, the second time", Plan(false, 1))],
        MessageKind.Receipt or MessageKind.Statement => [new("who pays", Document(kind))],
        MessageKind.ReviewDue => [new("the coach", Review(false) with { OpensLessons = false, Greeting = Coach, Student = "Nora Quill", Link = "https://lessons.example/reviews" })],
        MessageKind.ReviewReceived or MessageKind.ReviewLate => [Adult(Review(false)), Guardian(Review(true))],
        MessageKind.PackageEnding => [Adult(Package(false)), Guardian(Package(true)), new("an adult with one lesson left", Package(false) with { LastDay = "", Left = "One lesson", LeftCount = 1 })],
        MessageKind.PaymentDue => [new("who pays", Payment())],
        MessageKind.MorningList => [new("the coach", Morning())],
        MessageKind.LessonReminder => [Adult(Reminder(false)), Guardian(Reminder(true))],
        _ => [Adult(Booking(false)), Guardian(Booking(true))],
    };

    private static LetterExample Adult(object facts) => new("an adult", facts);

    private static LetterExample Guardian(object facts) => new("the guardian of a junior", facts);

    private static LetterFacts Plan(bool guardian, int wording) => new()
    {
        Greeting = guardian ? "Maud Quill" : "Nora",
        Student = guardian ? "Kit" : "Nora",
        ForGuardian = guardian,
        Practice = Practice,
        Coach = Coach,
        EmergencyNumber = "112",
        Link = "https://lessons.example/p/an-invented-link",
        StopLink = "https://lessons.example/stop/an-invented-link",
        LessonOn = "Monday 2 March",
        LookOn = "Monday 16 March",
        Message = ["The lower tee helped. We stay with it."],
        IfThen = "If it is Tuesday after work, then I go to the net.",
        Reasons = ["Your upper half gets to the ball before the club does."],
        Drills = ["Head against the shade: 3 x 10, 3 times a week, about 10 minutes. Cue: keep the shadow where it was"],
        Measures = ["Head shift on the way down: 3 swings with the driver, filmed face-on, the camera where it stood on Monday 2 March"],
        Cautions = ["Look around before each swing."],
        Wording = wording,
    };

    private static BookingLetterFacts Booking(bool guardian) => new()
    {
        Greeting = guardian ? "Maud Quill" : "Nora",
        Student = guardian ? "Kit" : "Nora",
        ForGuardian = guardian,
        OpensLessons = true,
        Practice = Practice,
        What = "Private hour",
        When = ["Tuesday 14 April 2026, 10:00 to 11:00 (Europe/London)"],
        Count = 1,
        Coach = Coach,
        Where = "Hill Lane range, Bay 2",
        Price = "GBP\u00a045.00",
        Terms = "Cancelling or moving is free until Monday 13 April 2026, 10:00 (Europe/London); after that GBP\u00a022.50 is owed.",
        Link = Page,
        Until = "Monday 13 April 2026, 18:00 (Europe/London)",
    };

    private static BookingLetterFacts Reminder(bool guardian) => Booking(guardian) with { ComingLink = $"{Page}/coming/a-lesson", CancelLink = $"{Page}/cancel/a-lesson" };

    private static ReviewLetterFacts Review(bool guardian) => new()
    {
        Greeting = guardian ? "Maud Quill" : "Nora",
        Student = guardian ? "Kit" : "Nora",
        ForGuardian = guardian,
        OpensLessons = true,
        Practice = Practice,
        Club = "driver",
        Promised = "Wednesday 15 April, 18:00 (Europe/London time)",
        Coach = Coach,
        Link = Page,
    };

    private static PackageLetterFacts Package(bool guardian) => new()
    {
        Greeting = guardian ? "Maud Quill" : "Nora",
        Student = guardian ? "Kit" : "Nora",
        ForGuardian = guardian,
        OpensLessons = true,
        Practice = Practice,
        Package = "Five hours",
        LastDay = "Thursday 30 April",
        Left = "3 lessons",
        LeftCount = 3,
        Link = Page,
    };

    private static DocumentLetterFacts Document(MessageKind kind) => new()
    {
        Greeting = "Maud Quill",
        Practice = Practice,
        Number = kind == MessageKind.Receipt ? "R-2026-0012" : "S-2026-0003",
        Total = "GBP\u00a045.00",
        FirstDay = kind == MessageKind.Receipt ? "" : "1 March 2026",
        LastDay = "31 March 2026",
        Method = kind == MessageKind.Receipt ? "card" : "",
        Balance = "At its end nothing is owed.",
        Lines = ["14 March 2026: Private hour, GBP\u00a045.00"],
        Taxes = ["20 %: GBP\u00a07.50 on GBP\u00a037.50"],
        From = [Practice, "Hill Lane 1"],
    };

    private static PaymentLetterFacts Payment() => new()
    {
        Greeting = "Maud Quill",
        Practice = Practice,
        Amount = "GBP\u00a045.00",
        Since = "28 March 2026",
        Lines = ["14 March 2026: Private hour, GBP\u00a045.00"],
        From = [Practice, "Hill Lane 1"],
    };

    private static MorningLetterFacts Morning() => new()
    {
        Greeting = Coach,
        Practice = Practice,
        Day = "Tuesday 14 April",
        Alerts = ["Ola Birk reported pain"],
        Lessons = ["10:00 to 11:00, Private hour: Nora Quill (is coming)"],
        Reviews = ["Kit Quill, promised by Wednesday 15 April, 18:00"],
        Drafts = ["Nora Quill"],
        Retests = ["Ola Birk: Head shift on the way down"],
        Messages = ["2 wait for your yes"],
        Link = "https://lessons.example/",
    };
}
