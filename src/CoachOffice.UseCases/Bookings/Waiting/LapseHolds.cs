using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.Waiting;

/// <summary>What the clock does every minute: ends what was held and ran out, which offers it to the next in line, and takes who waits for days gone by out of it.</summary>
public sealed class LapseHolds(OfficeDb db, BookingDoor door, EndHolds holds, PracticeClock clock)
{
    // One sweep leaves the rest to the next minute.
    private const int MostAtOnce = 200;

    /// <summary>How many bookings something ended in.</summary>
    public async Task<int> Due(CancellationToken stop = default)
    {
        var now = clock.Now;
        var due = await db.Seats.Where(s => s.HeldUntil <= now).OrderBy(s => s.HeldUntil).Take(MostAtOnce).Select(s => s.BookingId).ToListAsync(stop);
        foreach (var booking in due.Distinct())
        {
            await door.Change(new BookingDeed(booking, null, Actor.Clock, "hold-lapsed"), async b => await holds.Among([b.Id], stop) ? null : BookingRefusals.Over, stop);
            db.ChangeTracker.Clear();
        }

        await CloseTheLine(stop);
        return due.Distinct().Count();
    }

    private async Task CloseTheLine(CancellationToken stop)
    {
        var (now, today) = (clock.Now, await clock.Today(stop));
        var over = db.WaitingPlaces.Where(w => w.Status == WaitingStatus.Waiting
            && (w.LastDay < today || (w.BookingId != null && db.Bookings.Any(b => b.Id == w.BookingId && (b.Starts <= now || (b.Status != BookingStatus.Held && b.Status != BookingStatus.Confirmed))))));
        foreach (var waiting in await over.Take(MostAtOnce).ToListAsync(stop)) waiting.Leave();
        await db.TrySave(stop);
    }
}
