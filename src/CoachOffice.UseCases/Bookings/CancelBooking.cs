using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Cancels a whole booking with everybody in it.</summary>
public sealed class CancelBooking(BookingDoor door, ReleaseSeat release, TakeTime take)
{
    /// <summary>The booking, or why not.</summary>
    public async Task<Outcome<BookingId>> Of(BookingId id, int? version, CancelReason reason, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("cancel bookings");
        return await door.Change(new BookingDeed(id, version, actor, "booking-cancelled"), booking => Cancel(booking, reason, actor, stop), stop);
    }

    /// <summary>Within the caller's transaction.</summary>
    internal async Task<Refusal?> Cancel(Booking booking, CancelReason reason, Actor actor, CancellationToken stop)
    {
        if (!booking.IsOn) return BookingRefusals.Over;
        if (booking.Seats.Any(s => s.Status is SeatStatus.Attended or SeatStatus.NoShow)) return BookingRefusals.Marked;
        var now = door.Now;
        foreach (var seat in booking.Seats.Where(s => s.IsOpen).ToList())
        {
            if (await release.Release(booking, seat.Id, reason, (actor, now), stop) is { } against) return against;
        }

        booking.Cancel(now);
        return await take.For(booking, [], stop);
    }
}
