using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>The practice's own changes as one YAML file, in the form in which they are kept.</summary>
public sealed class ExportOwnRules(OfficeDb db)
{
    /// <summary>A file that says that nothing was changed.</summary>
    public const string Nothing = "removed: []\n";

    /// <summary>The file of an edition, of the one in force when null.</summary>
    public async Task<Outcome<string>> Of(int? edition, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayChangeRules) return NotAllowed.To("take the rulebook out");
        var number = edition ?? await db.BooksInForce.Select(b => (int?)b.Edition).SingleOrDefaultAsync(stop);
        var own = await db.RulebookEditions.Where(e => e.Number == number).Select(e => e.Own).SingleOrDefaultAsync(stop);
        if (own is null) return new Refusal("edition-not-found", number is null ? "No rulebook is in force yet." : $"There is no edition {number} of the rulebook.");
        return own.Length == 0 ? Nothing : own;
    }
}
