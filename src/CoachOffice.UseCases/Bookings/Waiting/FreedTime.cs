using CoachOffice.Data;
using CoachOffice.Data.Bookings;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Waiting;

/// <summary>Makes held bookings of a coach's freed time for who waits for any time that day.</summary>
public sealed class FreedTime(OfficeDb db, ITimeLocks locks, FindFreeTimes find, NewLesson lesson, KeepForWaiting keep)
{
    /// <summary>One for each in line while there is room. Saved; one that cannot be saved is left to the next.</summary>
    internal async Task In(Standing freed, IReadOnlyList<WaitingPlace> line, CancellationToken stop)
    {
        foreach (var waiting in line.Where(w => w.BookingId is null))
        {
            if (await Suiting(freed, waiting, stop) is not { } time || await keep.Until(time.Starts, stop) is not { } until) continue;
            if (!await locks.Try([TimeHolder.Of(waiting.StudentId)], stop)) continue;
            var form = new BookingForm { OfferingId = waiting.OfferingId, CoachId = time.Coach, PlaceId = time.Place, Start = time.LocalStart, Students = [waiting.StudentId], HeldUntil = until };
            if (!(await lesson.Of(form, stop)).TryGet(out var booking)) continue;
            db.Bookings.Add(booking);
            await keep.For(waiting, booking, booking.Seats[0], stop);
            if (await db.TrySave(stop) != Saved.Yes) return;
        }
    }

    /// <summary>The time nearest to the freed start that takes some of the freed time, by all that holds for students who book.</summary>
    private async Task<FreeTime?> Suiting(Standing freed, WaitingPlace waiting, CancellationToken stop)
    {
        var offering = await db.Offerings.AsNoTracking().SingleAsync(o => o.Id == waiting.OfferingId, stop);
        if (SharedLessons.Are(offering) || !offering.Coaches.Contains(freed.Coach)) return null;
        var day = freed.Time.Start.InZone(await keep.Zone(stop)).Date;
        var question = new FreeTimesQuestion { OfferingId = waiting.OfferingId, CoachId = freed.Coach, From = day, Until = day, Student = waiting.StudentId };
        if (!(await find.For(question, Actor.Student, stop)).TryGet(out var times)) return null;
        var length = Duration.FromMinutes(offering.Minutes);
        return times.Where(t => new Interval(t.Starts, t.Starts + length).Overlaps(freed.Time)).MinBy(t => (t.Starts - freed.Time.Start) is var off && off < Duration.Zero ? -off : off);
    }
}
