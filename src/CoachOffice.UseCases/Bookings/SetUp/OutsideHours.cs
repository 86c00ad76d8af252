using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>What is booked with a coach from now on and lies outside the hours: on purpose, or because the hours changed.</summary>
public sealed class OutsideHours(OfficeDb db, CoachHours hours, PracticeClock clock)
{
    /// <summary>In order of time; of the practice as a whole when no coach is named.</summary>
    public async Task<IReadOnlyList<OutsideBooking>> Of(AccountId? coach, CancellationToken stop = default)
    {
        var (now, zone) = (clock.Now, await clock.Zone(stop));
        var booked = await (from b in db.Bookings
                            join o in db.Offerings on b.OfferingId equals o.Id
                            join p in db.Places on b.PlaceId equals p.Id
                            where (coach == null || b.CoachId == coach) && b.Starts >= now && (b.Status == BookingStatus.Held || b.Status == BookingStatus.Confirmed)
                            orderby b.Starts, b.Id
                            select new { b.Id, b.CoachId, b.PlaceId, b.LocalStart, b.Starts, b.Ends, Offering = o.Name, Place = p.Name }).ToListAsync(stop);
        if (booked.Count == 0) return [];
        var days = new DateInterval(booked[0].Starts.InZone(zone).Date, booked.Max(b => b.Ends).InZone(zone).Date);
        var open = (await hours.Of([.. booked.Select(b => b.CoachId).Distinct()], days, stop)).ToLookup(o => o.Coach);
        return
        [
            .. booked.Select(b => (Booking: b, Then: AtWork.In([.. open[b.CoachId]], b.PlaceId, new Interval(b.Starts, b.Ends)))).Where(b => b.Then != WorkThen.Here)
                .Select(b => new OutsideBooking { Id = b.Booking.Id, CoachId = b.Booking.CoachId, LocalStart = b.Booking.LocalStart, Offering = b.Booking.Offering, Place = b.Booking.Place, Then = b.Then }),
        ];
    }
}
