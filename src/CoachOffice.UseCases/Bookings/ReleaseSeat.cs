using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Cancels one student's place in a booking; the last one cancels the booking.</summary>
public sealed class ReleaseSeat(BookingDoor door, TakeTime take)
{
    /// <summary>The booking, or why not. What it costs follows from the terms and was shown before.</summary>
    public async Task<Outcome<BookingId>> Of(BookingId id, SeatId seat, CancelReason reason, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("cancel bookings");
        return await door.Change(new BookingDeed(id, null, actor, "seat-released"), booking => Release(booking, seat, reason, door.Now, stop), stop);
    }

    /// <summary>Within the caller's transaction.</summary>
    internal async Task<Refusal?> Release(Booking booking, SeatId seat, CancelReason reason, Instant now, CancellationToken stop)
    {
        if (booking.Seats.FirstOrDefault(s => s.Id == seat) is not { } theirs) return BookingRefusals.SeatNotFound;
        if (!theirs.IsOpen) return theirs.Counts ? BookingRefusals.Marked : BookingRefusals.Over;
        var cost = CancelCost.Of(await door.Terms(stop), booking, theirs, now);
        booking.Release(seat, cost.IsLate && reason == CancelReason.ByStudent ? SeatStatus.CancelledLate : SeatStatus.Released, now);
        return await take.For(booking, [], stop);
    }
}
