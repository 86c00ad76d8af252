using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Waiting;

/// <summary>
/// What became free is offered to the next in line whom it suits, in the transaction that freed it: nobody gets it past the line. Called after the change
/// itself was saved, with how the booking stood before.
/// </summary>
public sealed class OfferFreed(OfficeDb db, FreedSeats seats, FreedTime time, PracticeClock clock)
{
    // Whom one freed lesson is tried with at most; the rest stay in line for the next.
    private const int MostAsked = 30;

    /// <summary>Offers what the change freed, if anything, and saves it; the caller commits.</summary>
    public async Task After(Standing before, Booking booking, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(booking);
        var now = Standing.Of(booking);
        if (now.IsOn && now.FreeSeats > before.FreeSeats && await Line(booking, now, stop) is { Count: > 0 } forSeats) await seats.In(booking, forSeats, stop);
        var isGone = before.IsOn && (!now.IsOn || before.Coach != now.Coach || before.Time != now.Time);
        if (isGone && before.Time.End > clock.Now && await Line(booking, before, stop) is { Count: > 0 } forTime) await time.In(before, forTime, stop);
    }

    /// <summary>Who waits for this booking, or for any time of some days with this one among them; first come, first served.</summary>
    private async Task<IReadOnlyList<WaitingPlace>> Line(Booking booking, Standing freed, CancellationToken stop)
    {
        var (day, id, coach) = (freed.Time.Start.InZone(await clock.Zone(stop)).Date, booking.Id, freed.Coach);
        return await db.WaitingPlaces
            .Where(w => w.Status == WaitingStatus.Waiting && (w.BookingId == id || (w.BookingId == null && w.FirstDay <= day && w.LastDay >= day && (w.CoachId == null || w.CoachId == coach))))
            .OrderBy(w => w.JoinedAt).ThenBy(w => w.Id).Take(MostAsked).ToListAsync(stop);
    }
}
