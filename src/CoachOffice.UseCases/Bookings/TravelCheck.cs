using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Whether the coach gets from the lesson before to this one, and from this one to the next.</summary>
public sealed class TravelCheck(OfficeDb db)
{
    private static readonly Duration Farthest = Duration.FromMinutes(Travel.LongestMinutes);

    /// <summary>Null, or which way is too long.</summary>
    public async Task<Refusal?> Against(Booking booking, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(booking);
        var travels = await db.Travels.AsNoTracking().ToListAsync(stop);
        if (!travels.Exists(t => t.OnePlace == booking.PlaceId || t.OtherPlace == booking.PlaceId)) return null;
        var (from, until) = (booking.Starts - TakenTime.Longest - Farthest, booking.BusyUntil + Farthest);
        var others = await db.Bookings
            .Where(b => b.CoachId == booking.CoachId && b.Starts > from && b.Starts < until && b.Id != booking.Id && b.PlaceId != booking.PlaceId && (b.Status == BookingStatus.Held || b.Status == BookingStatus.Confirmed))
            .Select(b => new { b.PlaceId, b.Starts, b.BusyUntil }).ToListAsync(stop);
        foreach (var other in others)
        {
            if (travels.Find(t => t.Joins(other.PlaceId, booking.PlaceId)) is not { } way) continue;
            var needed = Duration.FromMinutes(way.Minutes);
            if (other.BusyUntil + needed <= booking.Starts || booking.BusyUntil + needed <= other.Starts) continue;
            var name = await db.Places.Where(p => p.Id == other.PlaceId).Select(p => p.Name).SingleAsync(stop);
            return new Refusal("too-far", $"The coach is at {name} close to that time and needs {way.Minutes} minutes for the way. Pick another time.", nameof(BookingForm.Start));
        }

        return null;
    }
}
