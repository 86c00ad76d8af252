using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Gives a booking another time, length, coach, place or bay.</summary>
public sealed class MoveBooking(BookingDoor door, BookingFacts facts, TakeTime take, BookingEffects effects)
{
    /// <summary>The booking, or why it stays where it is.</summary>
    public async Task<Outcome<BookingId>> To(BookingId id, int? version, MoveForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("move bookings");
        return await door.Change(new BookingDeed(id, version, actor, "booking-moved"), booking => Move(booking, form, stop), stop);
    }

    /// <summary>Moves it within the caller's transaction, by the same rules.</summary>
    internal async Task<Refusal?> Move(Booking booking, MoveForm form, CancellationToken stop)
    {
        if (!booking.IsOn) return BookingRefusals.Over;
        if (booking.Seats.Any(s => s.Status is SeatStatus.Attended or SeatStatus.NoShow)) return BookingRefusals.Marked;
        var zone = await door.Zone(stop);
        var wanted = new BookingForm
        {
            OfferingId = booking.OfferingId,
            CoachId = form.CoachId ?? booking.CoachId,
            PlaceId = form.PlaceId ?? booking.PlaceId,
            ResourceId = form.ResourceId,
            Start = form.Start ?? booking.LocalStart,
            Minutes = form.Minutes ?? booking.Minutes,
        };
        if (await Wrong(wanted, stop) is { } wrong) return wrong;
        var time = new BookedTime(wanted.Start, form.Start is null ? booking.Zone : zone.Id, wanted.Minutes.Value, booking.BufferMinutes);
        var where = new BookingWhere(wanted.CoachId, wanted.PlaceId, wanted.ResourceId);
        var bays = await facts.BaysOf(booking, wanted, stop);
        booking.MoveTo(time, where);
        if (await take.For(booking, bays, stop) is { } taken) return taken;
        await effects.Moved(booking, stop);
        return null;
    }

    // The students it has already are no part of the question, nor is an offering that was taken out meanwhile.
    private async Task<Refusal?> Wrong(BookingForm wanted, CancellationToken stop)
    {
        var found = await facts.Of(wanted with { Students = [] }, stop);
        return found.Refusals.FirstOrDefault(r => r.Field is not (nameof(wanted.Students) or nameof(wanted.OfferingId)));
    }
}
