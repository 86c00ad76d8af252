using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>The rulebook to read, as it is in force or as an old plan was drafted by it.</summary>
public sealed class RulebookPages(OfficeDb db, Rulebooks rulebooks)
{
    /// <summary>The book of a hash, the one in force when null, or a refusal that there is none.</summary>
    public async Task<Outcome<RulebookView>> Of(string? sha256, Actor reader, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(reader);
        var inForce = await db.BooksInForce.AsNoTracking().SingleOrDefaultAsync(stop);
        if (inForce is null) return new Refusal("rulebook-not-found", "No rulebook is in force yet; look at what the program said when it started.");
        var wanted = sha256 ?? inForce.Sha256;
        if (wanted != inForce.Sha256 && !await db.RulebookEditions.AnyAsync(e => e.Sha256 == wanted, stop)) return new Refusal("rulebook-not-found", "This practice never had that rulebook.");
        return new RulebookView
        {
            Book = (await rulebooks.For(wanted, stop)).Book,
            Sha256 = wanted,
            Edition = inForce.Edition,
            IsInForce = wanted == inForce.Sha256,
            AdoptedAt = inForce.AdoptedAt,
            AdoptedBy = inForce.AdoptedBy,
            MayChange = reader.MayChangeRules,
            Waiting = reader.MayChangeRules ? (await db.WorkSeen(reader, stop)).Edits.Count : 0,
        };
    }
}
