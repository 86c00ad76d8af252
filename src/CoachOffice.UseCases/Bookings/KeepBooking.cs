using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings.Waiting;

namespace CoachOffice.UseCases.Bookings;

/// <summary>How a deed on a booking is kept: with its audit row, and with what it freed offered to who waits.</summary>
public sealed class KeepBooking(OfficeDb db, AuditTrail trail, OfferFreed freed)
{
    /// <summary>Saves the caller's changes with their audit row.</summary>
    internal async Task<Saved> As(BookingId booking, Actor actor, string action, CancellationToken stop)
    {
        trail.Add(actor, action, AuditSubject.Of(booking));
        var saved = await db.TrySave(stop);
        if (saved != Saved.Yes) db.ChangeTracker.Clear();
        return saved;
    }

    /// <summary>After the change was saved and before it is committed.</summary>
    internal Task Offer(Standing before, Booking booking, CancellationToken stop) => freed.After(before, booking, stop);
}
