using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>The times at which an offering can be booked. A student is held to the terms and to what students may book; staff to the clock alone.</summary>
public sealed class FindFreeTimes(OfficeDb db, PracticeClock clock, ReadBookingTerms terms, ReadDiary diary)
{
    /// <summary>Free times in order, or why there can be none.</summary>
    public async Task<Outcome<IReadOnlyList<FreeTime>>> For(FreeTimesQuestion question, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(actor);
        if (question.Until < question.From || Period.DaysBetween(question.From, question.Until) >= FreeTimesQuestion.MostDays) return new Refusal("free-times-days", "Look at up to five weeks at once.", nameof(question.Until));
        var offering = await db.Offerings.AsNoTracking().SingleOrDefaultAsync(o => o.Id == question.OfferingId, stop);
        if (offering is null || offering.Kind == OfferingKind.RemoteReview || (actor.Policy is null && question.Moving is null && !(offering.IsBookable && offering.ArchivedAt is null))) return new Refusal("offering-not-found", "This is not offered any more.", nameof(question.OfferingId));
        var wish = await Wish(offering, question, actor, stop);
        if (wish.Starts.End <= wish.Starts.Start) return Array.Empty<FreeTime>();
        var asked = new DiaryQuestion(offering, await Coaches(offering, question, stop), new DateInterval(question.From, question.Until), question.Student, question.Moving) { ByStudent = actor.Policy is null };
        return Outcome<IReadOnlyList<FreeTime>>.Of(FreeTimes.In(await diary.For(asked, stop), wish));
    }

    private async Task<FreeTimeWish> Wish(Offering offering, FreeTimesQuestion question, Actor actor, CancellationToken stop)
    {
        var (now, zone, today) = (clock.Now, await clock.Zone(stop), await clock.Today(stop));
        var held = await terms.Now(stop);
        var (minutes, buffer) = (offering.Minutes, offering.BufferMinutes);
        if (question.Moving is { } moving && await db.Bookings.Where(b => b.Id == moving).Select(b => new { b.Minutes, b.BufferMinutes }).SingleOrDefaultAsync(stop) is { } booked) (minutes, buffer) = (booked.Minutes, booked.BufferMinutes);
        var (first, last) = actor.Policy is null ? (now + Duration.FromHours(held.EarliestHours), LocalDate.Min(question.Until, today.PlusDays(held.LatestDays))) : (now, question.Until);
        var end = LocalTimes.At(last.PlusDays(1).AtMidnight(), zone);
        return new FreeTimeWish(minutes, buffer, held.StepMinutes, new Interval(Instant.Min(first, end), end), zone);
    }

    /// <summary>Those of the offering who still teach here.</summary>
    private async Task<IReadOnlyList<AccountId>> Coaches(Offering offering, FreeTimesQuestion question, CancellationToken stop)
    {
        var asked = offering.Coaches.Where(c => question.CoachId is not { } one || c == one).Select(c => c.Value).ToList();
        var active = await db.Users.Where(u => asked.Contains(u.Id) && u.DisabledAt == null && (u.Policy == Policy.Owner || u.Policy == Policy.Coach)).Select(u => u.Id).ToListAsync(stop);
        return [.. active.Select(AccountId.From)];
    }
}
