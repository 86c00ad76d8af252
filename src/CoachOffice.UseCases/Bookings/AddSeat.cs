using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Gives one more student a place in a booking.</summary>
public sealed class AddSeat(OfficeDb db, BookingDoor door, TakeTime take, BookingEffects effects)
{
    /// <summary>The booking, or why not.</summary>
    public async Task<Outcome<BookingId>> For(BookingId id, StudentId student, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("book lessons");
        return await door.Change(new BookingDeed(id, null, actor, "seat-added"), async booking => (await Add(booking, student, null, stop)).Refusals is [var against, ..] ? against : null, stop);
    }

    /// <summary>Within the caller's transaction; held until a time when one is given.</summary>
    internal async Task<Outcome<Seat>> Add(Booking booking, StudentId student, Instant? heldUntil, CancellationToken stop)
    {
        if (!booking.IsOn) return BookingRefusals.Over;
        if (booking.Seats.FirstOrDefault(s => s.Counts && s.StudentId == student) is { } has) return has;
        if (booking.FreeSeats == 0) return new Refusal("booking-full", $"There is room for {booking.Capacity}, and all places are taken.", nameof(BookingForm.Students));
        var known = await db.Students.AsNoTracking().SingleOrDefaultAsync(s => s.Id == student && s.ErasedAt == null, stop);
        if (known is null) return new Refusal("student-unknown", "Pick the student from the list.", nameof(BookingForm.Students));
        if (known.ArchivedAt is not null) return new Refusal("student-archived", $"{known.FullName} is archived; restore the record first.", nameof(BookingForm.Students));
        var offering = await db.Offerings.AsNoTracking().SingleAsync(o => o.Id == booking.OfferingId, stop);
        var seat = booking.Seat(SeatId.From(door.NewId()), student, SeatTerms.Of(offering, heldUntil), door.Now);
        db.Seats.Add(seat);
        if (await take.For(booking, [], stop) is { } against) return against;
        await effects.Seated(booking, seat, stop);
        if (heldUntil is null) await effects.Told(booking, seat, stop);
        return seat;
    }
}
