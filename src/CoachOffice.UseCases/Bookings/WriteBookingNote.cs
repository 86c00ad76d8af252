using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Keeps what the office notes about a booking.</summary>
public sealed class WriteBookingNote(BookingDoor door)
{
    /// <summary>The booking, or why not.</summary>
    public async Task<Outcome<BookingId>> On(BookingId id, int? version, string note, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(note);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("write about bookings");
        if (note.Length > 2000) return new Refusal("booking-note", "Write a note of at most 2,000 characters.", "Note");
        return await door.Change(new BookingDeed(id, version, actor, "booking-noted"), booking =>
        {
            booking.Write(note);
            return Task.FromResult<Refusal?>(null);
        }, stop);
    }
}
