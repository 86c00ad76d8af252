using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Cancels one student's place in a booking; the last one cancels the booking.</summary>
public sealed class ReleaseSeat(BookingDoor door, TakeTime take, BookingEffects effects)
{
    /// <summary>The booking, or why not. What it costs follows from the terms and was shown before.</summary>
    public async Task<Outcome<BookingId>> Of(BookingId id, SeatId seat, CancelReason reason, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("cancel bookings");
        return await door.Change(new BookingDeed(id, null, actor, "seat-released"), booking => Release(booking, seat, reason, (actor, door.Now), stop), stop);
    }

    /// <summary>Within the caller's transaction.</summary>
    internal async Task<Refusal?> Release(Booking booking, SeatId seat, CancelReason reason, (Actor Actor, Instant Now) by, CancellationToken stop)
    {
        if (booking.Seats.FirstOrDefault(s => s.Id == seat) is not { } theirs) return BookingRefusals.SeatNotFound;
        if (!theirs.IsOpen) return theirs.Counts ? BookingRefusals.Marked : BookingRefusals.Over;
        var wasHeld = theirs.Status == SeatStatus.Held;
        var cost = reason == CancelReason.ByPractice ? CancelCost.Nothing : CancelCost.Of(await door.Terms(stop), booking, theirs, by.Now);
        booking.Release(seat, cost.IsLate ? SeatStatus.CancelledLate : SeatStatus.Released, by.Now);
        if (await take.For(booking, [], stop) is { } against) return against;
        await effects.Released(booking, theirs, new SeatEnd(cost, by.Actor, wasHeld), stop);
        return null;
    }
}
