using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Marks that a student came or did not, or takes the mark back.</summary>
public sealed class MarkAttendance(BookingDoor door, BookingEffects effects)
{
    private static readonly Duration Early = Duration.FromHours(1);

    /// <summary>The booking, or why not.</summary>
    /// <param name="id">Which booking.</param>
    /// <param name="seat">Whose place.</param>
    /// <param name="came">True: came. False: did not. Null: takes the mark back.</param>
    /// <param name="actor">Who marks.</param>
    /// <param name="stop">Ends the wait.</param>
    public async Task<Outcome<BookingId>> Of(BookingId id, SeatId seat, bool? came, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("mark who came");
        var deed = new BookingDeed(id, null, actor, came switch { true => "seat-attended", false => "seat-missed", null => "seat-unmarked" });
        return await door.Change(deed, booking => Mark(booking, seat, (came, actor), stop), stop);
    }

    private async Task<Refusal?> Mark(Booking booking, SeatId seat, (bool? Came, Actor Actor) by, CancellationToken stop)
    {
        if (booking.Seats.FirstOrDefault(s => s.Id == seat) is not { } theirs) return BookingRefusals.SeatNotFound;
        var wanted = by.Came switch { true => SeatStatus.Attended, false => SeatStatus.NoShow, null => SeatStatus.Booked };
        if (theirs.Status == wanted) return null;
        if (!theirs.Counts || theirs.Status == SeatStatus.Held) return BookingRefusals.Over;
        if (door.Now < booking.Starts - Early) return new Refusal("booking-to-come", "Who came can be marked from an hour before the lesson on.");
        if (theirs.Status != SeatStatus.Booked) await Back(booking, theirs, by.Actor, stop);
        booking.Mark(seat, wanted, door.Now);
        if (wanted != SeatStatus.Booked) await effects.Marked(booking, theirs, new SeatEnd(CancelCost.OfNoShow(await door.Terms(stop), booking, theirs), by.Actor), stop);
        return null;
    }

    // One mark instead of another: what the first one wrote is reversed before.
    private async Task Back(Booking booking, Seat seat, Actor actor, CancellationToken stop)
    {
        booking.Mark(seat.Id, SeatStatus.Booked, door.Now);
        await effects.Marked(booking, seat, new SeatEnd(CancelCost.Nothing, actor), stop);
    }
}
