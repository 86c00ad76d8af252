using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings.Waiting;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Visits;

/// <summary>Keeps a free place in a group for a student who is about to book it.</summary>
public sealed class HoldSeat(OfficeDb db, BookingDoor door, AddSeat add, OwnHolds holds)
{
    /// <summary>The booking, or why not. Whoever has a place in it keeps that one.</summary>
    public async Task<Outcome<BookingId>> In(BookingId id, VisitPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(pass);
        var booking = await db.Bookings.AsNoTracking().Include(b => b.Seats).SingleOrDefaultAsync(b => b.Id == id, stop);
        var offering = booking is null ? null : await db.Offerings.AsNoTracking().SingleOrDefaultAsync(o => o.Id == booking.OfferingId && o.IsBookable && o.ArchivedAt == null, stop);
        if (booking is null || offering is null || !SharedLessons.Are(offering)) return VisitRefusals.NotFound;
        if (booking.Seats.Any(s => s.Counts && s.StudentId == pass.StudentId)) return id;
        var terms = await door.Terms(stop);
        if (booking.Starts < door.Now + Duration.FromHours(terms.EarliestHours)) return new Refusal("too-near", $"Places are booked here up to {terms.EarliestHours} hours before. Ask the practice.");
        await holds.LetGo(pass.StudentId, stop);
        var until = Instant.Min(door.Now + Duration.FromMinutes(terms.HoldMinutes), booking.Starts);
        var held = await door.Change(new BookingDeed(id, null, Actor.Student, "visit-held"), async b => (await add.Add(b, pass.StudentId, until, stop)).Refusals is [var against, ..] ? against : null, stop);
        return held.Succeeded ? held : VisitRefusals.Told(held.Refusals);
    }
}
