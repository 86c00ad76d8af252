using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>
/// All that decides which times of an offering are free on some days. Each query goes by an index from the days that are asked for, so that a calendar
/// of many years costs what a new one does.
/// </summary>
public sealed class ReadDiary(OfficeDb db, CoachHours hours, PracticeClock clock)
{
    private static readonly Duration LongestWay = Duration.FromMinutes(Travel.LongestMinutes);

    /// <summary>The diary of the question's coaches and days.</summary>
    public async Task<Diary> For(DiaryQuestion question, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(question);
        var (offering, coaches) = (question.Offering, question.Coaches);
        var places = await db.Places.Where(p => offering.Places.Contains(p.Id) && p.ArchivedAt == null).Select(p => p.Id).ToListAsync(stop);
        var bays = await db.Resources.Where(r => offering.Resources.Contains(r.Id) && r.ArchivedAt == null).Select(r => new { r.Id, r.PlaceId }).ToListAsync(stop);
        var open = (await hours.Of(coaches, question.Days, stop)).Where(o => places.Contains(o.Place)).ToList();
        if (open.Count == 0) return new Diary { Open = [] };
        var within = new Interval(open.Min(o => o.Time.Start), open.Max(o => o.Time.End));
        var taken = (await Taken(question, [.. bays.Select(b => b.Id)], within, stop)).ToLookup(t => t.Holder);
        return new Diary
        {
            Open = open,
            Taken = [.. coaches.SelectMany(c => taken[c.Value].Select(t => new CoachTaken(c, t.Place, t.Time))), .. await Busy(coaches, within, stop)],
            Student = question.Student is { } student ? [.. taken[student.Value].Select(t => t.Time)] : [],
            Bays = offering.Resources.Count == 0 ? null : [.. bays.Select(b => new Bay(b.PlaceId, [.. taken[b.Id.Value].Select(t => t.Time)]))],
            Ways = await db.Travels.AsNoTracking().ToListAsync(stop),
        };
    }

    private async Task<IEnumerable<(Guid Holder, PlaceId Place, Interval Time)>> Taken(DiaryQuestion question, IReadOnlyList<ResourceId> bays, Interval within, CancellationToken stop)
    {
        List<Guid> holders = [.. question.Coaches.Select(c => c.Value), .. bays.Select(b => b.Value)];
        if (question.Student is { } student) holders.Add(student.Value);
        var (from, until, moving) = (within.Start - TakenTime.Longest - LongestWay, within.End + TakenTime.Longest + LongestWay, question.Moving);

        // What was held and has run out is free, also before the clock has come round to end it. Students wait for the clock: it asks who is in line first.
        var over = question.ByStudent ? clock.Now - Duration.FromMinutes(1) : clock.Now;
        var rows = await (from taken in db.TakenTimes
                          join booking in db.Bookings on taken.BookingId equals booking.Id
                          where holders.Contains(taken.Holder) && taken.From > @from && taken.From < until
                          select new { taken.Holder, taken.From, taken.Until, booking.Id, booking.PlaceId, booking.HeldUntil }).ToListAsync(stop);

        var dropped = await OwnHolds(question, rows.Where(r => r.HeldUntil is not null && r.Holder == question.Student?.Value).Select(r => r.Id).ToList(), stop);
        return rows.Where(r => r.Id != moving && !(r.HeldUntil <= over) && !dropped.Contains(r.Id)).Select(r => (r.Holder, r.PlaceId, new Interval(r.From, r.Until)));
    }

    /// <summary>What the student only keeps is let go when they choose another time; what the waiting list offers them is not.</summary>
    private async Task<IReadOnlyList<BookingId>> OwnHolds(DiaryQuestion question, List<BookingId> held, CancellationToken stop)
    {
        if (!question.ByStudent || held.Count == 0 || question.Student is not { } student) return [];
        var offered = db.Seats.Where(s => db.WaitingPlaces.Any(w => w.OfferedSeat == s.Id && w.StudentId == student && w.Status == WaitingStatus.Offered)).Select(s => s.BookingId);
        var offers = await offered.ToListAsync(stop);
        return [.. held.Except(offers)];
    }

    private async Task<IEnumerable<CoachTaken>> Busy(IReadOnlyList<AccountId> coaches, Interval within, CancellationToken stop)
    {
        var (from, until) = (within.Start, within.End + TakenTime.Longest);
        var rows = await db.BusyTimes.AsNoTracking().Where(b => coaches.Contains(b.CoachId) && b.Until > from && b.From < until).ToListAsync(stop);
        return rows.Select(b => new CoachTaken(b.CoachId, null, new Interval(b.From, b.Until)));
    }
}
