using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Reads what a booking form offers to choose from.</summary>
public sealed class ListBookingChoices(OfficeDb db, ListCoaches coaches)
{
    private const int Most = 1000;

    private static readonly CompiledQuery<OfferingKind, Offering> Offerings =
        new((db, but) => db.Offerings.AsNoTracking().Where(o => o.ArchivedAt == null && o.Kind != but).OrderBy(o => o.Name).ThenBy(o => o.Id));

    private static readonly CompiledQuery<int, Place> Places = new((db, most) => db.Places.AsNoTracking().Where(p => p.ArchivedAt == null).OrderBy(p => p.Name).ThenBy(p => p.Id).Take(most));

    private static readonly CompiledQuery<int, Resource> Bays = new((db, most) => db.Resources.AsNoTracking().Where(r => r.ArchivedAt == null).OrderBy(r => r.Name).ThenBy(r => r.Id).Take(most));

    /// <summary>All that is not archived.</summary>
    public async Task<BookingChoices> Now(CancellationToken stop = default)
    {
        var offerings = await Offerings.Rows(db, OfferingKind.RemoteReview, stop);
        var places = await Places.Rows(db, Most, stop);
        var bays = await Bays.Rows(db, Most, stop);
        return new BookingChoices(
            [.. offerings.Select(o => new OfferingChoice(o.Id, o.Name, o.Kind, o.Minutes, o.Capacity, o.Coaches) { Places = o.Places })],
            await coaches.Now(stop: stop),
            [.. places.Select(p => new PlaceChoice(p.Id, p.Name))],
            [.. bays.Select(b => new BayChoice(b.Id, b.PlaceId, b.Name))]);
    }
}
