using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Visits;

/// <summary>Keeps a free time for a student who is about to book it, for as long as the terms say.</summary>
public sealed class HoldVisit(OfficeDb db, BookingDoor door, BookLesson book, FindFreeTimes find, OwnHolds holds)
{
    /// <summary>The held booking, or why not. The same form twice is one booking.</summary>
    public async Task<Outcome<BookingId>> For(HoldForm form, VisitPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(pass);
        if (await Sent(form, pass, stop) is { } before) return before;
        await holds.LetGo(pass.StudentId, stop);
        if (!await IsFree(form, pass, stop)) return VisitRefusals.Gone;
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var until = await Until(form, stop);
        var made = await book.Add(new BookingForm { Id = form.Id, OfferingId = form.OfferingId, CoachId = form.CoachId, PlaceId = form.PlaceId, Start = form.Start, Students = [pass.StudentId], HeldUntil = until }, stop);
        if (!made.Succeeded)
        {
            db.ChangeTracker.Clear();
            return VisitRefusals.Told(made.Refusals);
        }

        switch (await door.Keep(form.Id, Actor.Student, "visit-held", stop))
        {
            case Saved.Yes:
                await transaction.CommitAsync(stop);
                return form.Id;
            case Saved.WasThere:
                await transaction.RollbackAsync(stop);
                return await Sent(form, pass, stop) ?? VisitRefusals.Gone;
            default:
                return VisitRefusals.Gone;
        }
    }

    // An id of somebody else's booking is as good as none.
    private async Task<Outcome<BookingId>?> Sent(HoldForm form, VisitPass pass, CancellationToken stop)
    {
        var owners = await db.Bookings.Where(b => b.Id == form.Id).Select(b => b.Seats.Any(s => s.StudentId == pass.StudentId)).ToListAsync(stop);
        return owners switch { [] => null, [true] => (Outcome<BookingId>)form.Id, _ => VisitRefusals.NotFound };
    }

    private async Task<bool> IsFree(HoldForm form, VisitPass pass, CancellationToken stop)
    {
        var question = new FreeTimesQuestion { OfferingId = form.OfferingId, CoachId = form.CoachId, From = form.Start.Date, Until = form.Start.Date, Student = pass.StudentId };
        return (await find.For(question, Actor.Student, stop)).TryGet(out var free) && free.Any(t => t.Place == form.PlaceId && t.Coach == form.CoachId && t.LocalStart == form.Start);
    }

    private async Task<Instant> Until(HoldForm form, CancellationToken stop)
    {
        var terms = await door.Terms(stop);
        return Instant.Min(door.Now + Duration.FromMinutes(terms.HoldMinutes), LocalTimes.At(form.Start, await door.Zone(stop)));
    }
}
