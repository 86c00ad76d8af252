using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>Whether an offering can be given as entered: its places, coaches and bays are there and fit each other.</summary>
internal static class OfferingCheck
{
    /// <summary>Everything that is wrong.</summary>
    public static async Task<IReadOnlyList<Refusal>> Of(OfficeDb db, OfferingDetails details, OfferingId? self, CancellationToken stop)
    {
        var wrong = details.Check().ToList();
        var names = await db.Offerings.Where(o => self == null || o.Id != self).Select(o => o.Name).ToListAsync(stop);
        if (names.Exists(n => string.Equals(n, details.Name.Trim(), StringComparison.OrdinalIgnoreCase))) wrong.Add(new("offering-name-taken", $"There is one called '{details.Name.Trim()}'; give this one another name.", nameof(details.Name)));
        var coaches = details.Coaches.Select(c => c.Value).ToList();
        if (await db.Users.CountAsync(u => coaches.Contains(u.Id) && (u.Policy == Policy.Owner || u.Policy == Policy.Coach), stop) < coaches.Distinct().Count()) wrong.Add(new("coach-unknown", "Pick coaches from the list.", nameof(details.Coaches)));
        wrong.AddRange(await Round(db, details, stop));
        return wrong;
    }

    private static async Task<IEnumerable<Refusal>> Round(OfficeDb db, OfferingDetails details, CancellationToken stop)
    {
        var places = await db.Places.ToDictionaryAsync(p => p.Id, p => p.Name, stop);
        var bays = await db.Resources.Where(r => details.Resources.Contains(r.Id)).Select(r => new { r.PlaceId, r.ArchivedAt }).ToListAsync(stop);
        if (details.Places.Any(p => !places.ContainsKey(p)) || bays.Count < details.Resources.Distinct().Count()) return [new("place-unknown", "Pick places and bays from the list.", nameof(details.Places))];
        if (details.Resources.Count == 0) return [];
        if (bays.Exists(b => !details.Places.Contains(b.PlaceId))) return [new("bay-elsewhere", "A ticked bay is at a place that is not ticked. Tick the place, or take the bay off.", nameof(details.Resources))];
        return details.Places.Where(p => !bays.Exists(b => b.PlaceId == p && b.ArchivedAt == null)).Select(p => new Refusal("place-without-bay", $"This takes a bay, and none is ticked at {places[p]}. Tick one there, or make a second offering for {places[p]} that needs none.", nameof(details.Resources)));
    }
}
