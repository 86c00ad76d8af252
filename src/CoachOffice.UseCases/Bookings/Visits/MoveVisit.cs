using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.Visits;

/// <summary>A student moves a lesson of their own to another free time, while the notice runs.</summary>
public sealed class MoveVisit(OfficeDb db, BookingDoor door, MoveBooking move, FindFreeTimes find)
{
    /// <summary>The booking, or why not; what is there already stays there.</summary>
    public async Task<Outcome<BookingId>> To(HoldForm form, VisitPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(pass);
        var booking = await db.Bookings.AsNoTracking().Include(b => b.Seats).SingleOrDefaultAsync(b => b.Id == form.Id, stop);
        if (booking is null || booking.Seats.All(s => s.StudentId != pass.StudentId)) return VisitRefusals.NotFound;
        if (booking.LocalStart == form.Start && booking.CoachId == form.CoachId && booking.PlaceId == form.PlaceId && booking.IsOn) return form.Id;
        var question = new FreeTimesQuestion { OfferingId = booking.OfferingId, CoachId = form.CoachId, From = form.Start.Date, Until = form.Start.Date, Student = pass.StudentId, Moving = form.Id };
        var isFree = (await find.For(question, Actor.Student, stop)).TryGet(out var free) && free.Any(t => t.Place == form.PlaceId && t.LocalStart == form.Start);
        if (!isFree) return VisitRefusals.Gone with { Sentence = "That time is not free any more. Nothing was moved: pick another." };
        return await door.Change(new BookingDeed(form.Id, null, Actor.Student, "visit-moved"), b => Move(b, form, pass, stop), stop);
    }

    private async Task<Refusal?> Move(Booking booking, HoldForm form, VisitPass pass, CancellationToken stop)
    {
        if (!VisitRules.MayMove(booking, pass.StudentId, await door.Terms(stop), door.Now)) return VisitRefusals.CannotMove;
        return await move.Move(booking, new MoveForm { Start = form.Start, CoachId = form.CoachId, PlaceId = form.PlaceId }, stop);
    }
}
