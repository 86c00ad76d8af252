using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.Visits;

/// <summary>A student cancels their part in a lesson, or lets go what is kept for them. What it costs was said before; when that changed meanwhile, nothing happens.</summary>
public sealed class CancelVisit(OfficeDb db, BookingDoor door, ReleaseSeat release)
{
    /// <summary>The booking, or why not; what is cancelled already stays cancelled.</summary>
    /// <param name="id">Which.</param>
    /// <param name="knowsItIsLate">True when the page said that the notice is over.</param>
    /// <param name="pass">Whose.</param>
    /// <param name="stop">Ends the wait.</param>
    public async Task<Outcome<BookingId>> Of(BookingId id, bool knowsItIsLate, VisitPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(pass);
        var before = await Seats(id, pass, stop);
        if (before.Count == 0) return VisitRefusals.NotFound;
        if (!before.Exists(s => s.Counts)) return id;
        var cancelled = await door.Change(new BookingDeed(id, null, Actor.Student, "visit-cancelled"), booking => Cancel(booking, knowsItIsLate, pass, stop), stop);

        // Two presses at once: the second finds what the first did.
        return cancelled.Succeeded || (await Seats(id, pass, stop)).Exists(s => s.Counts) ? cancelled : id;
    }

    private Task<List<Seat>> Seats(BookingId id, VisitPass pass, CancellationToken stop)
    {
        var student = pass.StudentId;
        return db.Seats.AsNoTracking().Where(s => s.BookingId == id && s.StudentId == student).ToListAsync(stop);
    }

    private async Task<Refusal?> Cancel(Booking booking, bool knowsItIsLate, VisitPass pass, CancellationToken stop)
    {
        var now = door.Now;
        if (booking.Seats.FirstOrDefault(s => s.StudentId == pass.StudentId && s.IsOpen) is not { } seat) return BookingRefusals.Marked;
        if (booking.Starts <= now) return VisitRefusals.Begun;
        if (CancelCost.Of(await door.Terms(stop), booking, seat, now).IsLate && !knowsItIsLate) return VisitRefusals.Changed;
        if (seat.Status == SeatStatus.Held && await db.WaitingPlaces.SingleOrDefaultAsync(w => w.OfferedSeat == seat.Id && w.Status == WaitingStatus.Offered, stop) is { } offered) offered.Leave();
        return await release.Release(booking, seat.Id, CancelReason.ByStudent, (Actor.Student, now), stop);
    }
}
