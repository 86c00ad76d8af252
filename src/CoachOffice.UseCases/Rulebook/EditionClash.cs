using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Somebody took another edition into force since this person began: says who, when, why and what differs.</summary>
public sealed class EditionClash(OfficeDb db, PracticeClock clock)
{
    /// <summary>Never empty; nothing was saved.</summary>
    public async Task<IReadOnlyList<Refusal>> Since(int edition, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        db.ChangeTracker.Clear();
        var later = await db.RulebookEditions.AsNoTracking().Where(e => e.Number > edition).OrderBy(e => e.Number).ToListAsync(stop);
        var zone = await clock.Zone(stop);
        if (later.Count == 0) return [new(Clash.Code, $"There is no edition {edition} of the rulebook to begin with. Open it again.")];
        return
        [
            .. later.Select(e => new Refusal(Clash.Code, $"{e.ByName} saved edition {e.Number} of the rulebook at {e.AdoptedAt.InZone(zone):HH:mm}{Because(e.Why)}, after {actor.Name} opened edition {edition}.")),
            .. later.SelectMany(e => e.Changes).Distinct().Select(c => new Refusal(Clash.Code, $"Saved meanwhile: {c}.")),
            new(Clash.Code, "Nothing of yours was saved and nothing was overwritten: look at what changed, then save again."),
        ];
    }

    private static string Because(string why) => why.Length == 0 ? "" : $" (\"{why}\")";
}
