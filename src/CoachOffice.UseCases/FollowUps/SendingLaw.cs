using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Plans;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Whether a claimed message goes now. Pure; the first law that speaks decides.</summary>
public static class SendingLaw
{
    private static readonly Duration JustTold = Duration.FromDays(3);
    private static readonly Duration Rest = Duration.FromHours(24);

    /// <summary>The verdict.</summary>
    public static SendingVerdict Of(SendingFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        SendingVerdict? first = Wanted(facts);
        return first ?? StopLaw.Of(facts.Student, facts.Message.Kind) ?? Arrived(facts) ?? Reachable(facts) ?? Hour(facts) ?? ByKind(facts) ?? new SendingVerdict.Go();
    }

    // Nothing goes out that a coach did not approve, nor what nobody waits for any more.
    private static SendingVerdict.Never? Wanted(SendingFacts facts)
    {
        if (facts.Plan.ApprovedAt is null) return new SendingVerdict.Never("plan-not-approved");
        var inHand = facts.Plan.Status == PlanStatus.Active || (facts.Plan.Status == PlanStatus.Completed && facts.Message.Kind == MessageKind.SecondLook);
        if (!inHand) return new SendingVerdict.Never("plan-not-active");
        if (facts.Student.ErasedAt is not null || facts.Student.ArchivedAt is not null) return new SendingVerdict.Never("student-archived");
        if (facts.Message.Kind == MessageKind.PlanDelivery) return null;
        return MessageTraits.IsEncouragement(facts.Message.Kind) || facts.Look is { AnsweredAt: null } ? null : new SendingVerdict.Never("answered");
    }

    // A plan is not sent twice by guess; a second note does no harm.
    private static SendingVerdict.Ask? Arrived(SendingFacts facts) =>
        facts.Message is { SendingAt: not null, Kind: MessageKind.PlanDelivery } ? new SendingVerdict.Ask(Problems.SentUnknown) : null;

    private static SendingVerdict.Ask? Reachable(SendingFacts facts) => facts.Student.RecipientOn(facts.Today) is { } recipient
        ? StopLaw.OfAddress(recipient.Address, facts.Bounced)
        : new SendingVerdict.Ask(facts.IsMinor ? "no-guardian" : "no-address");

    private static SendingVerdict.Later? Hour(SendingFacts facts)
    {
        if (facts.Message.AtOnce) return null;
        if (facts.Plan.RestartsOn is { } restart && restart > facts.Today) return new SendingVerdict.Later(facts.Dates.Morning(restart));
        var hours = facts.Dates.For(facts.Student.Contact);
        return hours.IsQuiet(facts.Now) ? new SendingVerdict.Later(hours.AfterQuiet(facts.Now)) : null;
    }

    private static SendingVerdict? ByKind(SendingFacts facts) => facts.Message.Kind switch
    {
        MessageKind.RetestPrompt => Prompt(facts),
        MessageKind.SecondLook => OnLessonDay(facts),
        MessageKind.PracticeNudge => Note(facts),
        MessageKind.WeeklyCheckIn => WasTold(facts) ?? Note(facts),
        _ => null,
    };

    private static SendingVerdict? Prompt(SendingFacts facts)
    {
        if (facts.Sent.Any(s => s.Kind == MessageKind.RetestPrompt && s.PlanId == facts.Plan.Id && facts.Dates.DayOf(s.At) == facts.Today)) return new SendingVerdict.Never("told-already");
        if (!FollowUpDates.IsRested(facts.LastPractice, facts.Now)) return new SendingVerdict.Later(facts.Dates.NextMorning(facts.LastPractice!.Value + Rest));
        return OnLessonDay(facts);
    }

    private static SendingVerdict.Later? OnLessonDay(SendingFacts facts) =>
        facts.Taught.Contains(facts.Today) ? new SendingVerdict.Later(facts.Dates.Morning(facts.Today.PlusDays(1))) : null;

    // Who wrote a line a moment ago has answered.
    private static SendingVerdict.Never? WasTold(SendingFacts facts) => facts.LastNote is { } note && facts.Now < note + JustTold ? new SendingVerdict.Never("answered") : null;

    private static SendingVerdict? Note(SendingFacts facts)
    {
        if (facts.IsMinor) return new SendingVerdict.Never("minor");
        if (facts.Unanswered >= Encouragement.MostUnanswered) return new SendingVerdict.Never("two-unanswered");
        if (facts.Message.AtOnce) return null;
        var notes = facts.Sent.Where(s => MessageTraits.IsEncouragement(s.Kind)).Select(s => facts.Dates.DayOf(s.At)).ToList();
        var day = Encouragement.EarliestDay(facts.Today, notes, [.. facts.Sent.Select(s => facts.Dates.DayOf(s.At))]);
        return day > facts.Today ? new SendingVerdict.Later(facts.Dates.Morning(day)) : null;
    }
}
