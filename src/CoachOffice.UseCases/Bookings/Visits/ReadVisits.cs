using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings.Calendars;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Visits;

/// <summary>A student's own lessons.</summary>
public sealed class ReadVisits(OfficeDb db, ReadLessons lessons, ReadBookingTerms terms, PracticeClock clock)
{
    private static readonly Duration Past = Duration.FromDays(400);

    /// <summary>Those that are not older than a year or so, by start.</summary>
    public async Task<IReadOnlyList<VisitView>> All(VisitPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(pass);
        var (student, since) = (pass.StudentId, clock.Now - Past);
        return await Views(pass, db.Bookings.Where(b => b.Starts > since && b.Seats.Any(s => s.StudentId == student)), stop);
    }

    /// <summary>One of them, or null: also when it is somebody else's.</summary>
    public async Task<VisitView?> Of(BookingId id, VisitPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(pass);
        var student = pass.StudentId;
        return (await Views(pass, db.Bookings.Where(b => b.Id == id && b.Seats.Any(s => s.StudentId == student)), stop)).SingleOrDefault();
    }

    private async Task<IReadOnlyList<VisitView>> Views(VisitPass pass, IQueryable<Booking> bookings, CancellationToken stop)
    {
        var student = pass.StudentId;
        var found = await lessons.Of(bookings, stop);
        var offered = await db.WaitingPlaces.Where(w => w.StudentId == student && w.Status == WaitingStatus.Offered && w.OfferedSeat != null).Select(w => w.OfferedSeat!.Value).ToListAsync(stop);
        var (held, now) = (await terms.Now(stop), clock.Now);
        return [.. found.Select(lesson => View(lesson, lesson.Booking.Seats.Where(s => s.StudentId == student).OrderBy(s => s.BookedAt).ThenBy(s => s.Id.Value).Last(), (held, now, offered)))];
    }

    private static VisitView View(LessonFacts lesson, Seat seat, (BookingTerms Terms, Instant Now, List<SeatId> Offered) around)
    {
        var (booking, now) = (lesson.Booking, around.Now);
        var isLapsed = seat.Status == SeatStatus.Held && seat.HeldUntil <= now;
        return new VisitView
        {
            Id = booking.Id,
            OfferingId = lesson.Offering.Id,
            Offering = lesson.Offering.Name,
            Coach = lesson.Coach,
            Place = string.Join(", ", new[] { lesson.Place.Name, lesson.Bay }.Where(p => p.Length > 0)),
            Address = lesson.Place.Address,
            Zone = booking.Zone,
            LocalStart = booking.LocalStart,
            Starts = booking.Starts,
            Ends = booking.Ends,
            Minutes = booking.Minutes,
            Status = isLapsed ? SeatStatus.Lapsed : seat.Status,
            HeldUntil = isLapsed ? null : seat.HeldUntil,
            IsOffer = around.Offered.Contains(seat.Id) && !isLapsed,
            PriceMinor = seat.PriceMinor,
            PaysByPackage = seat.PackageId is not null,
            Cost = CancelCost.Of(around.Terms, booking, seat, now),
            CostLate = CancelCost.AfterNotice(around.Terms, booking, seat),
            ComingAt = seat.ComingAt,
            MayMove = VisitRules.MayMove(booking, seat.StudentId, around.Terms, now),
            MayCancel = booking.IsOn && seat.IsOpen && !isLapsed && booking.Starts > now,
        };
    }
}
