using CoachOffice.Data;
using CoachOffice.Data.Bookings;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Waiting;

/// <summary>Keeps free seats of a group for who waits.</summary>
public sealed class FreedSeats(OfficeDb db, ITimeLocks locks, KeepForWaiting keep)
{
    /// <summary>As many as there are, to those in line whom they suit. Saved; one that cannot be saved is left to the next.</summary>
    internal async Task In(Booking booking, IReadOnlyList<WaitingPlace> line, CancellationToken stop)
    {
        var offering = await db.Offerings.AsNoTracking().SingleAsync(o => o.Id == booking.OfferingId, stop);
        if (!SharedLessons.Are(offering)) return;
        foreach (var waiting in line.Where(w => w.OfferingId == booking.OfferingId))
        {
            if (booking.FreeSeats == 0 || await keep.Until(booking.Starts, stop) is not { } until) return;
            if (booking.Seats.Any(s => s.Counts && s.StudentId == waiting.StudentId) || !await IsFree(waiting, booking, stop)) continue;
            var seat = keep.Seat(booking, waiting, SeatTerms.Of(offering, until));
            db.Seats.Add(seat);
            db.TakenTimes.Add(TakenTime.Of(keep.NewId(), booking, TimeHolder.Of(waiting.StudentId)));
            await keep.For(waiting, booking, seat, stop);
            if (await db.TrySave(stop) != Saved.Yes) return;
        }
    }

    /// <summary>Somebody who is booking for the same student at this moment is not waited for: that could make both wait for each other.</summary>
    private async Task<bool> IsFree(WaitingPlace waiting, Booking booking, CancellationToken stop)
    {
        if (!await locks.Try([TimeHolder.Of(waiting.StudentId)], stop)) return false;
        if (!await db.Students.AnyAsync(s => s.Id == waiting.StudentId && s.ArchivedAt == null && s.ErasedAt == null, stop)) return false;
        var (student, from, until, earliest) = (waiting.StudentId.Value, booking.Starts, booking.Ends, booking.Starts - TakenTime.Longest);
        return !await db.TakenTimes.AnyAsync(t => t.Holder == student && t.From < until && t.From > earliest && t.Until > from, stop);
    }
}
