using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Reads some days of the calendar: one query for bookings, one for who comes, the rest by few rows. The cost is that of the days asked for, whatever the years behind them; days that did not change since cost the question whether they did.</summary>
public sealed class ReadCalendar(OfficeDb db, PracticeClock clock, ListCoaches coaches, KeptCalendars kept)
{
    /// <summary>The days. Those that nobody changed since they were read are the same object.</summary>
    public async Task<CalendarView> For(CalendarWish wish, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(wish);
        var zone = await clock.Zone(stop);
        var time = new Interval(wish.First.AtStartOfDayInZone(zone).ToInstant(), wish.First.PlusDays(wish.Days).AtStartOfDayInZone(zone).ToInstant());

        // The stamp is taken before the days are read: what changes in between is read anew next time.
        var saves = await CalendarQueries.Of(db, time, wish.Coach, stop);
        var teaching = await coaches.Now(stop: stop);
        if (saves is null) return await Read(wish, zone, (time, teaching), stop);
        var stamp = new CalendarStamp(wish, clock.Now.InZone(zone).Date, zone.Id, saves);
        return kept.Find(stamp) is { } known && known.Coaches.SequenceEqual(teaching) ? known : kept.Keep(stamp, await Read(wish, zone, (time, teaching), stop));
    }

    private async Task<CalendarView> Read(CalendarWish wish, DateTimeZone zone, (Interval Time, IReadOnlyList<CoachName> Coaches) at, CancellationToken stop)
    {
        var bookings = await Bookings(wish.Coach, at.Time, stop);
        return new CalendarView
        {
            Wish = wish,
            Today = clock.Now.InZone(zone).Date,
            Zone = zone,
            Coaches = at.Coaches,
            Bookings = bookings,
            Shades = await Shades(wish.Coach, at.Time, stop),
            HasNoOffering = bookings.Count == 0 && !await db.Offerings.AnyAsync(o => o.ArchivedAt == null, stop),
        };
    }

    private async Task<IReadOnlyList<CalendarBooking>> Bookings(AccountId? coach, Interval time, CancellationToken stop)
    {
        var (from, until) = (time.Start - TakenTime.Longest, time.End);
        var wanted = db.Bookings.Where(b => b.Starts > from && b.Starts < until && (b.Status == BookingStatus.Held || b.Status == BookingStatus.Confirmed));
        if (coach is { } one) wanted = wanted.Where(b => b.CoachId == one);
        var found = await (
            from booking in wanted
            join offering in db.Offerings on booking.OfferingId equals offering.Id
            join place in db.Places on booking.PlaceId equals place.Id
            join resource in db.Resources on booking.ResourceId equals resource.Id into bays
            from bay in bays.DefaultIfEmpty()
            orderby booking.Starts, booking.Id
            select new CalendarBooking
            {
                Id = booking.Id,
                Version = booking.Version,
                Offering = offering.Name,
                Kind = offering.Kind,
                CoachId = booking.CoachId,
                Place = place.Name,
                Bay = bay == null ? "" : bay.Name,
                Starts = booking.Starts,
                Ends = booking.Ends,
                Status = booking.Status,
                IsOfSeries = booking.SeriesId != null,
                Capacity = booking.Capacity,
            }).ToListAsync(stop);
        var seats = await Seats(wanted, stop);
        return [.. found.Where(b => b.Ends > time.Start).Select(b => b with { Seats = [.. seats[b.Id]] })];
    }

    private async Task<ILookup<BookingId, CalendarSeat>> Seats(IQueryable<Booking> wanted, CancellationToken stop)
    {
        var found = await (
            from booking in wanted
            join seat in db.Seats on booking.Id equals seat.BookingId
            join student in db.Students on seat.StudentId equals student.Id
            where seat.Status != SeatStatus.Lapsed && seat.Status != SeatStatus.Released && seat.Status != SeatStatus.CancelledLate
            orderby student.SearchText, seat.Id
            select new { booking.Id, Seat = seat.Id, seat.StudentId, student.GivenName, student.FamilyName, seat.Status, seat.ComingAt }).ToListAsync(stop);
        return found.ToLookup(s => s.Id, s => new CalendarSeat(s.Seat, s.StudentId, $"{s.GivenName} {s.FamilyName}".Trim(), s.Status) { ComingAt = s.ComingAt });
    }

    private async Task<IReadOnlyList<CalendarShade>> Shades(AccountId? coach, Interval time, CancellationToken stop)
    {
        var (from, until) = (time.Start, time.End);
        var closed = await db.HoursExceptions.AsNoTracking().Where(e => e.OpenAt == null && e.Until > from && e.From < until).ToListAsync(stop);
        var busy = await db.BusyTimes.AsNoTracking().Where(b => b.Until > from && b.From < until).ToListAsync(stop);
        return [.. closed.Select(e => new CalendarShade(e.CoachId, new Interval(e.From, e.Until), e.Note.Length > 0 ? e.Note : "closed"))
            .Concat(busy.Select(b => new CalendarShade(b.CoachId, new Interval(b.From, b.Until), b.Source)))
            .Where(s => coach is null || s.Coach is null || s.Coach == coach).OrderBy(s => s.Time.Start)];
    }
}
