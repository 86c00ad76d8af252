using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Reads one booking.</summary>
public sealed class BookingPage(OfficeDb db, BookingDoor door, ReadPractice practice, AtWork work)
{
    /// <summary>The booking, or null.</summary>
    public async Task<BookingView?> Of(BookingId id, CancellationToken stop = default)
    {
        var booking = await db.Bookings.AsNoTracking().Include(b => b.Seats).SingleOrDefaultAsync(b => b.Id == id, stop);
        if (booking is null) return null;
        var offering = await db.Offerings.AsNoTracking().SingleAsync(o => o.Id == booking.OfferingId, stop);
        var place = await db.Places.Where(p => p.Id == booking.PlaceId).Select(p => p.Name).SingleAsync(stop);
        var bay = booking.ResourceId is { } resource ? await db.Resources.Where(r => r.Id == resource).Select(r => r.Name).SingleAsync(stop) : "";
        var seats = await Seats(booking, stop);
        var terms = await door.Terms(stop);
        return new BookingView
        {
            Booking = Row(booking, offering, (place, bay)) with { Seats = [.. seats.Where(s => booking.Seats.Single(x => x.Id == s.Id).Counts)] },
            Coach = await db.Users.Where(u => u.Id == booking.CoachId.Value).Select(u => u.DisplayName).SingleOrDefaultAsync(stop) ?? "",
            PlaceId = booking.PlaceId,
            ResourceId = booking.ResourceId,
            OfferingId = booking.OfferingId,
            Minutes = booking.Minutes,
            Note = booking.Note,
            HeldUntil = booking.HeldUntil,
            Zone = await door.Zone(stop),
            Now = door.Now,
            Costs = booking.Seats.Where(s => s.IsOpen).ToDictionary(s => s.Id, s => CancelCost.Of(terms, booking, s, door.Now)),
            Gone = [.. seats.Where(s => !booking.Seats.Single(x => x.Id == s.Id).Counts)],
            SeriesId = booking.SeriesId,
            Work = booking.IsOn && booking.Starts > door.Now ? await work.Of(booking.CoachId, booking.PlaceId, new NodaTime.Interval(booking.Starts, booking.Ends), stop) : WorkThen.Here,
            Currency = (await practice.Now(stop))?.Currency ?? "",
        };
    }

    private async Task<IReadOnlyList<CalendarSeat>> Seats(Booking booking, CancellationToken stop)
    {
        var named = booking.Seats.Select(s => s.StudentId).ToList();
        var students = await db.Students.AsNoTracking().Where(s => named.Contains(s.Id)).ToDictionaryAsync(s => s.Id, stop);
        return [.. booking.Seats.OrderBy(s => students[s.StudentId].SearchText, StringComparer.Ordinal).ThenBy(s => s.BookedAt).Select(s => new CalendarSeat(s.Id, s.StudentId, students[s.StudentId].FullName, s.Status) { ComingAt = s.ComingAt })];
    }

    private static CalendarBooking Row(Booking booking, Offering offering, (string Place, string Bay) at) => new()
    {
        Id = booking.Id,
        Version = booking.Version,
        Offering = offering.Name,
        Kind = offering.Kind,
        CoachId = booking.CoachId,
        Place = at.Place,
        Bay = at.Bay,
        Starts = booking.Starts,
        Ends = booking.Ends,
        Status = booking.Status,
        IsOfSeries = booking.SeriesId is not null,
        Capacity = booking.Capacity,
    };
}
