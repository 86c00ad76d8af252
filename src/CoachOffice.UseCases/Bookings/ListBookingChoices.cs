using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Reads what a booking form offers to choose from.</summary>
public sealed class ListBookingChoices(OfficeDb db, ListCoaches coaches)
{
    /// <summary>All that is not archived.</summary>
    public async Task<BookingChoices> Now(CancellationToken stop = default)
    {
        var offerings = await db.Offerings.AsNoTracking().Where(o => o.ArchivedAt == null && o.Kind != OfferingKind.RemoteReview).OrderBy(o => o.Name).ThenBy(o => o.Id).ToListAsync(stop);
        var places = await db.Places.AsNoTracking().Where(p => p.ArchivedAt == null).OrderBy(p => p.Name).ThenBy(p => p.Id).ToListAsync(stop);
        var bays = await db.Resources.AsNoTracking().Where(r => r.ArchivedAt == null).OrderBy(r => r.Name).ThenBy(r => r.Id).ToListAsync(stop);
        return new BookingChoices(
            [.. offerings.Select(o => new OfferingChoice(o.Id, o.Name, o.Kind, o.Minutes, o.Capacity, o.Coaches) { Places = o.Places })],
            await coaches.Now(stop: stop),
            [.. places.Select(p => new PlaceChoice(p.Id, p.Name))],
            [.. bays.Select(b => new BayChoice(b.Id, b.PlaceId, b.Name))]);
    }
}
