using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.Calendars.Busy;

/// <summary>Lists the calendars a coach brought.</summary>
public sealed class ListBusySources(OfficeDb db, PracticeClock clock)
{
    /// <summary>By name.</summary>
    public async Task<Outcome<BusySources>> Of(Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach || actor.Account is not { } coach) return NotAllowed.To("keep busy times");
        var times = await db.BusyTimes.Where(b => b.CoachId == coach).Select(b => new { b.Source, b.From, b.Until }).ToListAsync(stop);
        var rows = times.GroupBy(t => t.Source, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => new BusySource(g.Key, g.Count(), g.Min(t => t.From), g.Max(t => t.Until)));
        return new BusySources(await clock.Zone(stop), [.. rows]);
    }
}
