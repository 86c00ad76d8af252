using CoachOffice.Domain;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using NodaTime;

namespace CoachOffice.UseCases.Students;

/// <summary>Rows into a story in time.</summary>
internal static class StoryTelling
{
    public static IReadOnlyList<StoryItem> Of(HistoryFacts facts, DateTimeZone zone) =>
    [
        .. Lessons(facts).Concat(Plans(facts, zone)).Concat(CheckIns(facts)).Concat(Retests(facts, zone)).Concat(Messages(facts, zone))
            .OrderByDescending(i => i.On).ThenByDescending(i => i.At).ThenByDescending(i => i.Id),
    ];

    private static IEnumerable<StoryItem> Lessons(HistoryFacts facts) => facts.Lessons.Select(l => new StoryItem(
        StoryKind.Lesson,
        l.Id.Value,
        l.HeldOn,
        l.CreatedAt,
        $"{(l.Kind == Domain.Lessons.LessonKind.Retest ? "Re-test readings" : "Lesson")} with the {Terms.Of(l.Club)}, {Count(l.Readings, "reading")}."));

    private static IEnumerable<StoryItem> Plans(HistoryFacts facts, DateTimeZone zone)
    {
        foreach (var plan in facts.Plans)
        {
            yield return new(StoryKind.Plan, plan.Id.Value, plan.CreatedAt.InZone(zone).Date, plan.CreatedAt, $"Plan drafted, {Count(plan.Stages, "stage")}.");
            foreach (var change in plan.Changes)
                yield return new(StoryKind.Plan, plan.Id.Value, change.At.InZone(zone).Date, change.At, $"{Said(change)} by {change.By}.");
        }
    }

    private static string Said(PlanChange change) => (change.From, change.To) switch
    {
        (PlanStatus.Draft, PlanStatus.Active) => "Plan approved",
        (PlanStatus.OnHold, PlanStatus.Active) => "Plan resumed",
        (_, PlanStatus.OnHold) => change.Reason == "pain-report" ? "Plan paused after a pain report" : "Plan paused",
        (_, PlanStatus.Completed) => "Plan completed",
        (_, PlanStatus.Revoked) => "Plan withdrawn",
        _ => "Plan marked as entered in error",
    };

    private static IEnumerable<StoryItem> CheckIns(HistoryFacts facts) => facts.CheckIns.Select(c => new StoryItem(
        StoryKind.CheckIn,
        c.Id,
        c.PracticedOn,
        c.At,
        c.Pain || c.Emergency ? $"Pain reported{(c.PainRegion is { } region ? $" ({Terms.Of(region)})" : "")}." : $"Practised {Count(c.Minutes, "minute")}."));

    private static IEnumerable<StoryItem> Retests(HistoryFacts facts, DateTimeZone zone) =>
        from retest in facts.Retests
        where retest is { Status: RetestStatus.Completed, Verdict: not null, EndedAt: not null }
        let at = retest.EndedAt!.Value
        select new StoryItem(StoryKind.Retest, retest.Id, at.InZone(zone).Date, at, retest.Verdict!.Sentence);

    private static IEnumerable<StoryItem> Messages(HistoryFacts facts, DateTimeZone zone) =>
        from message in facts.Sent
        select new StoryItem(StoryKind.Message, message.Id, message.At.InZone(zone).Date, message.At, $"{Named(message.Kind)} sent.");

    private static string Named(MessageKind kind) => kind switch
    {
        MessageKind.PlanDelivery => "The plan was",
        MessageKind.PracticeNudge => "A practice reminder was",
        MessageKind.RetestPrompt => "A re-test prompt was",
        MessageKind.SecondLook => "A second-look prompt was",
        MessageKind.BookingInvitation => "An invitation to a lesson was",
        MessageKind.BookingCancelled => "A cancellation was",
        MessageKind.Receipt => "A receipt was",
        MessageKind.Statement => "A statement was",
        MessageKind.ReviewReceived => "The promise of an answer to clips was",
        MessageKind.ReviewDue => "A reminder to the coach of a promised answer was",
        MessageKind.ReviewLate => "A word that an answer is late was",
        MessageKind.LessonReminder => "A reminder of a lesson was",
        MessageKind.WeeklyCheckIn => "The week's question was",
        MessageKind.PackageEnding => "A word about a package was",
        MessageKind.PaymentDue => "A letter about something to pay was",
        MessageKind.MorningList => "A coach's morning list was",
        _ => "An offer from the waiting list was",
    };

    private static string Count(int number, string thing) => $"{number} {thing}{(number == 1 ? "" : "s")}";
}
