using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Undo of a cancelled booking: it takes place after all, with those who were cancelled with it, if everybody is still free.</summary>
public sealed class TakeBackCancel(OfficeDb db, BookingDoor door, TakeTime take, BookingEffects effects)
{
    /// <summary>The booking, or why it stays cancelled.</summary>
    public async Task<Outcome<BookingId>> Of(BookingId id, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("book lessons");
        return await door.Change(new BookingDeed(id, null, actor, "booking-taken-back"), booking => Again(booking, actor, stop), stop);
    }

    private async Task<Refusal?> Again(Booking booking, Actor actor, CancellationToken stop)
    {
        if (booking.IsOn) return null;
        if (booking.Status != BookingStatus.Cancelled) return BookingRefusals.Over;
        var back = booking.Seats.Where(s => s.EndedAt == booking.CancelledAt && s.Status is SeatStatus.Released or SeatStatus.CancelledLate).ToList();
        var named = back.Select(s => s.StudentId).ToList();
        if (await db.Students.AnyAsync(s => named.Contains(s.Id) && (s.ErasedAt != null || s.ArchivedAt != null), stop)) return new Refusal("student-archived", "Somebody who was to come is not here any more. Book anew for those who are.");
        booking.TakeBack([.. back.Select(s => s.Id)]);
        if (await take.For(booking, [], stop) is { } against) return against;
        foreach (var seat in back) await effects.TakenBack(booking, seat, actor, stop);
        return null;
    }
}
