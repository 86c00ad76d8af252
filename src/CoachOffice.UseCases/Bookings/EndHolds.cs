using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Ends what was kept free for somebody who did not confirm in time, in the caller's transaction.</summary>
public sealed class EndHolds(OfficeDb db, IClock clock)
{
    /// <summary>True when something among these bookings had run out; it is over then, and its time is free.</summary>
    public async Task<bool> Among(IReadOnlyCollection<BookingId> bookings, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(bookings);
        if (bookings.Count == 0) return false;
        var now = clock.GetCurrentInstant();
        var held = await db.Bookings.Include(b => b.Seats).Where(b => bookings.Contains(b.Id) && b.Seats.Any(s => s.HeldUntil <= now)).ToListAsync(stop);
        foreach (var booking in held) await End(booking, now, stop);
        return held.Count > 0;
    }

    private async Task End(Booking booking, Instant now, CancellationToken stop)
    {
        foreach (var seat in booking.Seats.Where(s => s.HeldUntil <= now).ToList())
        {
            booking.Release(seat.Id, SeatStatus.Lapsed, now);
            seat.PayFrom(null);
            if (await db.WaitingPlaces.SingleOrDefaultAsync(w => w.OfferedSeat == seat.Id && w.Status == WaitingStatus.Offered, stop) is { } offered) offered.PassBy();
        }

        var keep = booking.IsOn ? TimeHolder.AllOf(booking).Select(h => h.Id).ToList() : [];
        await db.TakenTimes.Where(t => t.BookingId == booking.Id && !keep.Contains(t.Holder)).ExecuteDeleteAsync(stop);
    }
}
