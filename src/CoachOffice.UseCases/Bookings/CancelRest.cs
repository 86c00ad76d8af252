using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings.Waiting;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Cancels a lesson of a row and all that come after it, as the practice's wish; those that took place stay.</summary>
public sealed class CancelRest(OfficeDb db, CancelBooking cancel, BookingDoor door, BookingEffects effects)
{
    /// <summary>How many were cancelled, or why none.</summary>
    public async Task<Outcome<int>> From(BookingId id, CancelReason reason, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("cancel bookings");
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        if (await db.Bookings.AsNoTracking().SingleOrDefaultAsync(b => b.Id == id, stop) is not { } first) return BookingRefusals.NotFound;
        if (first.SeriesId is not { } series) return new Refusal("booking-alone", "This lesson is not one of a row.");
        var rest = await db.Bookings.Include(b => b.Seats).Where(b => b.SeriesId == series && b.Starts >= first.Starts && b.Status == BookingStatus.Confirmed).OrderBy(b => b.Starts).ToListAsync(stop);
        var open = rest.Where(b => b.Seats.All(s => s.Status is not (SeatStatus.Attended or SeatStatus.NoShow))).ToList();
        if (open.Count == 0) return BookingRefusals.Over;
        var before = open.Select(b => (Standing: Standing.Of(b), Booking: b)).ToList();
        foreach (var booking in open)
        {
            if (await cancel.Cancel(booking, reason, actor, stop) is { } against) return against;
        }

        await effects.RestCancelled(open, stop);
        if (await door.Keep(id, actor, "series-cancelled", stop) != Saved.Yes) return new Refusal(Clash.Code, "Somebody else changed one of these lessons at the same moment. Look again, then repeat it.");
        foreach (var (standing, booking) in before) await door.Offer(standing, booking, stop);
        await transaction.CommitAsync(stop);
        return open.Count;
    }
}
