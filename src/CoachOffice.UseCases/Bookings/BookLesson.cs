using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Books a lesson for one or more students. The same form sent twice is one booking; two forms for one time are one booking and one refusal.</summary>
public sealed class BookLesson(OfficeDb db, BookingDoor door, NewLesson lesson, BookingEffects effects)
{
    /// <summary>The booking's id, or why not.</summary>
    public async Task<Outcome<BookingId>> As(BookingForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("book lessons");
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        if (form.Id is { } sent && await db.Bookings.AnyAsync(b => b.Id == sent, stop)) return sent;
        var outcome = await Add(form, stop);
        if (!outcome.TryGet(out var booking))
        {
            db.ChangeTracker.Clear();
            return Outcome<BookingId>.Refused(outcome.Refusals);
        }

        if (form.HeldUntil is null)
        {
            foreach (var seat in booking.Seats) await effects.Told(booking, seat, stop);
        }

        switch (await door.Keep(booking.Id, actor, form.HeldUntil is null ? "booking-made" : "booking-held", stop))
        {
            case Saved.Yes:
                await transaction.CommitAsync(stop);
                return booking.Id;
            case Saved.WasThere when form.Id is { } twice:
                return twice;
            default:
                return BookingRefusals.Taken;
        }
    }

    /// <summary>Adds a booking to the caller's transaction, its time taken, without saving: one of a series, or a student's own.</summary>
    internal async Task<Outcome<Booking>> Add(BookingForm form, CancellationToken stop)
    {
        var made = await lesson.Of(form, stop);
        if (!made.TryGet(out var booking)) return made;
        db.Bookings.Add(booking);
        foreach (var seat in booking.Seats) await effects.Seated(booking, seat, stop);
        return booking;
    }
}
