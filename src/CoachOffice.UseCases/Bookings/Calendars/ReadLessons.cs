using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.Calendars;

/// <summary>Reads bookings with what people read about them: names of offering, place, bay and coach.</summary>
public sealed class ReadLessons(OfficeDb db)
{
    /// <summary>The bookings of a query, by start.</summary>
    public async Task<IReadOnlyList<LessonFacts>> Of(IQueryable<Booking> bookings, CancellationToken stop)
    {
        var found = await bookings.AsNoTracking().Include(b => b.Seats).AsSplitQuery().OrderBy(b => b.Starts).ThenBy(b => b.Id).ToListAsync(stop);
        if (found.Count == 0) return [];
        var (offeringIds, placeIds) = (found.Select(b => b.OfferingId).Distinct().ToList(), found.Select(b => b.PlaceId).Distinct().ToList());
        var coachIds = found.Select(b => b.CoachId.Value).Distinct().ToList();
        var offerings = await db.Offerings.AsNoTracking().Where(o => offeringIds.Contains(o.Id)).ToDictionaryAsync(o => o.Id, stop);
        var places = await db.Places.AsNoTracking().Where(p => placeIds.Contains(p.Id)).ToDictionaryAsync(p => p.Id, stop);
        var bays = await Bays(found, stop);
        var coaches = await db.Users.Where(u => coachIds.Contains(u.Id)).ToDictionaryAsync(u => u.Id, u => u.DisplayName, stop);
        return [.. found.Select(b => new LessonFacts(b, offerings[b.OfferingId], places[b.PlaceId], b.ResourceId is { } bay ? bays[bay] : "", coaches[b.CoachId.Value]))];
    }

    private async Task<Dictionary<ResourceId, string>> Bays(IReadOnlyList<Booking> found, CancellationToken stop)
    {
        var ids = found.Select(b => b.ResourceId).OfType<ResourceId>().Distinct().ToList();
        return ids.Count == 0 ? [] : await db.Resources.Where(r => ids.Contains(r.Id)).ToDictionaryAsync(r => r.Id, r => r.Name, stop);
    }
}
