using CoachOffice.Data;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>The practice's places with their bays and the ways between them.</summary>
public sealed class ReadPlaces(OfficeDb db)
{
    /// <summary>By name, archived ones too.</summary>
    public async Task<PlacesView> All(CancellationToken stop = default)
    {
        var places = await db.Places.AsNoTracking().OrderBy(p => p.Name).ThenBy(p => p.Id).ToListAsync(stop);
        var bays = (await db.Resources.AsNoTracking().OrderBy(r => r.Name).ThenBy(r => r.Id).ToListAsync(stop)).ToLookup(r => r.PlaceId);
        return new PlacesView([.. places.Select(p => new PlaceView(p, [.. bays[p.Id]]))], await db.Travels.AsNoTracking().ToListAsync(stop));
    }
}
