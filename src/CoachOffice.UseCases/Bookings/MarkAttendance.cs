using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Marks that a student came or did not, or takes the mark back.</summary>
public sealed class MarkAttendance(BookingDoor door)
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
        return await door.Change(deed, booking => Task.FromResult(Mark(booking, seat, came)), stop);
    }

    private Refusal? Mark(Booking booking, SeatId seat, bool? came)
    {
        if (booking.Seats.FirstOrDefault(s => s.Id == seat) is not { } theirs) return BookingRefusals.SeatNotFound;
        var wanted = came switch { true => SeatStatus.Attended, false => SeatStatus.NoShow, null => SeatStatus.Booked };
        if (theirs.Status == wanted) return null;
        if (!theirs.Counts || theirs.Status == SeatStatus.Held) return BookingRefusals.Over;
        if (door.Now < booking.Starts - Early) return new Refusal("booking-to-come", "Who came can be marked from an hour before the lesson on.");
        booking.Mark(seat, wanted, door.Now);
        return null;
    }
}
