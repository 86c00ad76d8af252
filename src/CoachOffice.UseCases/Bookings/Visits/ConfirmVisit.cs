using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.Visits;

/// <summary>A student books what is kept for them: a time they chose, or a place the waiting list offered.</summary>
public sealed class ConfirmVisit(OfficeDb db, BookingDoor door, BookingEffects effects)
{
    /// <summary>The booking, or why not; what is booked already stays booked.</summary>
    public async Task<Outcome<BookingId>> Of(BookingId id, VisitPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(pass);
        var before = await Seats(id, pass, stop);
        if (before.Count == 0) return VisitRefusals.NotFound;
        if (before.Contains(SeatStatus.Booked)) return id;
        var confirmed = await door.Change(new BookingDeed(id, null, Actor.Student, "visit-confirmed"), booking => Confirm(booking, pass, stop), stop);

        // Two presses at once: the second finds what the first did.
        return confirmed.Succeeded || !(await Seats(id, pass, stop)).Contains(SeatStatus.Booked) ? confirmed : id;
    }

    private Task<List<SeatStatus>> Seats(BookingId id, VisitPass pass, CancellationToken stop)
    {
        var student = pass.StudentId;
        return db.Seats.AsNoTracking().Where(s => s.BookingId == id && s.StudentId == student).Select(s => s.Status).ToListAsync(stop);
    }

    private async Task<Refusal?> Confirm(Booking booking, VisitPass pass, CancellationToken stop)
    {
        var seat = booking.Seats.FirstOrDefault(s => s.StudentId == pass.StudentId && s.Status == SeatStatus.Held);
        if (seat is null || !booking.IsOn || seat.HeldUntil <= door.Now) return VisitRefusals.HoldOver;
        booking.Confirm(seat.Id);
        if (await db.WaitingPlaces.SingleOrDefaultAsync(w => w.OfferedSeat == seat.Id && w.Status == WaitingStatus.Offered, stop) is { } offered) offered.Take();
        await effects.Told(booking, seat, stop);
        return null;
    }
}
