using CoachOffice.Data;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>The history of the rulebook: who took which edition into force, when and why, and what changed.</summary>
public sealed class ListEditions(OfficeDb db)
{
    /// <summary>Newest first; empty before the first.</summary>
    public async Task<IReadOnlyList<EditionRow>> Now(CancellationToken stop = default) =>
        await Of(db, await db.BooksInForce.Select(b => (int?)b.Edition).SingleOrDefaultAsync(stop) ?? 0, stop);

    internal static async Task<IReadOnlyList<EditionRow>> Of(OfficeDb db, int inForce, CancellationToken stop)
    {
        // The own changes themselves stay in the database: a list needs none of their text.
        var rows = await db.RulebookEditions.OrderByDescending(e => e.Number)
            .Select(e => new { e.Number, e.Sha256, e.Kind, e.AdoptedAt, e.ByName, e.Why, e.Changes }).ToListAsync(stop);
        return [.. rows.Select(e => new EditionRow
        {
            Number = e.Number,
            Sha256 = e.Sha256,
            Kind = e.Kind,
            AdoptedAt = e.AdoptedAt,
            By = e.ByName,
            Why = e.Why,
            Changes = e.Changes,
            IsInForce = e.Number == inForce,
        })];
    }
}
