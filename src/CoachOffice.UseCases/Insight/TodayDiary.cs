using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Lessons.Reviews;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Insight;

/// <summary>The appointments of today: booked lessons, lessons of the last days nobody marked, and remote reviews by promise. A coach sees their own, the desk everybody's.</summary>
public sealed class TodayDiary(OfficeDb db, PracticeClock clock)
{
    private static readonly Duration Unmarked = Duration.FromDays(14);

    private static readonly CompiledQueryOfTwo<Instant, Instant, DiaryRow> Booked = new((db, first, last) =>
        from booking in db.Bookings
        join offering in db.Offerings on booking.OfferingId equals offering.Id
        where booking.Starts >= first && booking.Starts < last && (booking.Status == BookingStatus.Held || booking.Status == BookingStatus.Confirmed)
        orderby booking.Starts, booking.Id
        select new DiaryRow(booking.Id, booking.CoachId, booking.Starts, booking.Ends, offering.Name)
        {
            Places = booking.Capacity,
            Seats = db.Seats.Where(s => s.BookingId == booking.Id && (s.Status == SeatStatus.Booked || s.Status == SeatStatus.Attended || s.Status == SeatStatus.NoShow))
                .Select(s => new DiarySeat(s.StudentId, db.Students.Where(t => t.Id == s.StudentId).Select(t => t.GivenName + " " + t.FamilyName).First(), s.Status) { ComingAt = s.ComingAt }).ToList(),
        });

    private static readonly CompiledQueryOfTwo<Instant, Instant, DiaryRow> Open = new((db, first, last) =>
        from booking in db.Bookings
        join offering in db.Offerings on booking.OfferingId equals offering.Id
        where booking.Starts >= first && booking.Starts < last && booking.Status == BookingStatus.Confirmed && db.Seats.Any(s => s.BookingId == booking.Id && s.Status == SeatStatus.Booked)
        orderby booking.Starts, booking.Id
        select new DiaryRow(booking.Id, booking.CoachId, booking.Starts, booking.Ends, offering.Name));

    private static readonly CompiledQuery<int, DiaryReview> Waiting = new((db, most) =>
        (from review in db.RemoteReviews
         join student in db.Students on review.StudentId equals student.Id
         where review.Status == ReviewStatus.Received || review.Status == ReviewStatus.Opened
         orderby review.PromisedBy, review.Id
         select new DiaryReview(review.Id, review.CoachId, (student.GivenName + " " + student.FamilyName).Trim(), review.PromisedBy)).Take(most));

    /// <summary>Now, against which what is left is told.</summary>
    public Instant Now => clock.Now;

    /// <summary>The day.</summary>
    public async Task<DiaryView> For(Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return new DiaryView([], [], []);
        var zone = await clock.Zone(stop);
        var today = clock.Now.InZone(zone).Date;
        var (from, until) = (today.AtStartOfDayInZone(zone).ToInstant(), today.PlusDays(1).AtStartOfDayInZone(zone).ToInstant());
        var own = actor.MayTeach ? actor.Account : null;
        return new DiaryView(
            [.. (await Booked.Rows(db, from, until, stop)).Where(b => own is null || b.CoachId == own)],
            [.. (await Open.Rows(db, from - Unmarked, from, stop)).Where(b => own is null || b.CoachId == own)],
            actor.MayTeach ? [.. (await Waiting.Rows(db, TodayPage.Most, stop)).Where(r => r.CoachId is null || r.CoachId == own || actor.MayOwn)] : []);
    }
}
