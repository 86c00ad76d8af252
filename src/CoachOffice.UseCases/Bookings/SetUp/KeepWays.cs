using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>Keeps how long the ways from one place to others take. A way of no time is not kept.</summary>
public sealed class KeepWays(OfficeDb db, AuditTrail trail, INewIds ids)
{
    /// <summary>The place, or what is wrong.</summary>
    /// <param name="from">One end.</param>
    /// <param name="minutes">The other ends, each with its minutes.</param>
    /// <param name="actor">Who does it.</param>
    /// <param name="stop">Ends the wait.</param>
    public async Task<Outcome<PlaceId>> From(PlaceId from, IReadOnlyDictionary<PlaceId, int> minutes, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(minutes);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("change places");
        var places = await db.Places.Select(p => p.Id).ToListAsync(stop);
        if (!places.Contains(from) || minutes.Keys.Any(p => p == from || !places.Contains(p))) return SetUpRefusals.NoPlace;
        if (minutes.Values.Any(m => m is < 0 or > Travel.LongestMinutes)) return new Refusal("way-minutes", $"A way takes from 0 to {Travel.LongestMinutes} minutes.", "Ways");
        var kept = await db.Travels.Where(t => t.OnePlace == from || t.OtherPlace == from).ToListAsync(stop);
        foreach (var (to, wanted) in minutes) Keep(kept.Find(t => t.Joins(from, to)), from, to, wanted);
        trail.Add(actor, "ways-kept", AuditSubject.Of(from));
        return await db.TrySave(stop) == Saved.Yes ? from : SetUpRefusals.Busy;
    }

    private void Keep(Travel? way, PlaceId from, PlaceId to, int minutes)
    {
        // One row for both directions: the smaller id first, so that two who keep it at once meet at the unique key.
        if (way is null && minutes > 0) db.Travels.Add(from.Value < to.Value ? Travel.Between(ids.Next(), from, to, minutes) : Travel.Between(ids.Next(), to, from, minutes));
        else if (way is not null && minutes > 0) way.Takes(minutes);
        else if (way is not null) db.Travels.Remove(way);
    }
}
