using CoachOffice.Data;
using CoachOffice.Data.Bookings;
using CoachOffice.Domain;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>
/// Takes the time of a coach, a bay and the students for a booking, or says who is not free. Asked and taken within the caller's transaction, behind
/// locks on everyone it concerns; the database refuses overlaps once more by itself.
/// </summary>
public sealed class TakeTime(OfficeDb db, ITimeLocks locks, EndHolds holds, TravelCheck travel, INewIds ids)
{
    /// <summary>Makes the taken times those of the booking as it is now; null, or what stands against it. Of several bays the first free one is taken when the booking names none.</summary>
    public async Task<Refusal?> For(Booking booking, IReadOnlyList<ResourceId> bays, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(booking);
        ArgumentNullException.ThrowIfNull(bays);
        var choice = booking.ResourceId is null ? bays : [];
        await locks.Hold([.. TimeHolder.AllOf(booking), .. choice.Select(TimeHolder.Of)], stop);
        await db.TakenTimes.Where(t => t.BookingId == booking.Id).ExecuteDeleteAsync(stop);
        if (!booking.IsOn) return null;
        var taken = await Near(booking, choice, stop);
        if (await holds.Among([.. taken.Select(t => t.BookingId).Distinct()], stop)) taken = await Near(booking, choice, stop);
        if (choice.Count > 0 && PickBay(booking, choice, taken) is { } full) return full;
        var mine = TimeHolder.AllOf(booking).Select(h => TakenTime.Of(ids.Next(), booking, h)).ToList();
        if (taken.Find(t => mine.Exists(m => Overlap(m, t))) is { } against) return await TakenWords.Of(db, booking, against, stop);
        if (await travel.Against(booking, stop) is { } tooFar) return tooFar;
        db.TakenTimes.AddRange(mine);
        return null;
    }

    private Task<List<TakenTime>> Near(Booking booking, IReadOnlyList<ResourceId> bays, CancellationToken stop)
    {
        var holders = TimeHolder.AllOf(booking).Select(h => h.Id).Concat(bays.Select(b => b.Value)).ToList();
        var (from, until, earliest) = (booking.Starts, booking.BusyUntil, booking.Starts - TakenTime.Longest);
        return db.TakenTimes.AsNoTracking().Where(t => holders.Contains(t.Holder) && t.From < until && t.From > earliest && t.Until > from && t.BookingId != booking.Id).ToListAsync(stop);
    }

    private static Refusal? PickBay(Booking booking, IReadOnlyList<ResourceId> bays, List<TakenTime> taken)
    {
        var free = bays.Where(b => !taken.Exists(t => t.Holder == b.Value && t.From < booking.Ends)).ToList();
        if (free.Count == 0) return new Refusal(BookingRefusals.TakenCode, "No bay or room is free at that time. Pick another time or place.", nameof(BookingForm.ResourceId));
        booking.UseBay(free[0]);
        return null;
    }

    private static bool Overlap(TakenTime one, TakenTime other) => one.Holder == other.Holder && new Interval(one.From, one.Until).Overlaps(new Interval(other.From, other.Until));
}
