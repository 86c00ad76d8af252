using CoachOffice.Data;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Takes a tried book into force as the next edition, in the caller's transaction.</summary>
public sealed class EditionPress(OfficeDb db, Rulebooks rulebooks, BookShelf shelf, AuditTrail trail, IClock clock)
{
    private const string TheProgram = "the program";

    /// <summary>Saves the edition and all that goes with it; when another was faster, nothing is kept and the database says so.</summary>
    public async Task<Saved> Take(TriedBook book, StandingBook? standing, EditionWish wish, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(wish);
        var compiled = book.Compiled ?? throw new InvalidOperationException("A book with faults was never to be adopted.");
        var loaded = compiled.Loaded;
        var edition = Edition(book, loaded, standing, wish);
        if (!await db.KeptRulebooks.AnyAsync(b => b.Sha256 == loaded.Sha256, stop))
            db.KeptRulebooks.Add(new KeptRulebook(loaded.Sha256, loaded.Text.Own().Bundle(), edition.AdoptedAt, edition.ShippedSha256));
        db.RulebookEditions.Add(edition);
        if (standing is null) db.BooksInForce.Add(BookInForce.First(edition));
        else standing.Row.Adopt(edition);
        if (wish.Actor is { } actor) trail.Add(actor, $"rulebook-{Domain.Terms.Of(wish.Kind)}", AuditSubject.Edition(edition.Number), $"edition:{edition.Number} book:{loaded.Sha256[..12]}");
        var saved = await db.TrySave(stop);

        // The next draft finds it compiled, and other drafts need not wait while it compiles.
        if (saved != Saved.Yes) return saved;
        rulebooks.Keep(compiled);
        shelf.Keep(edition, loaded);
        return saved;
    }

    private RulebookEdition Edition(TriedBook book, LoadedRulebook loaded, StandingBook? standing, EditionWish wish) => new()
    {
        Number = (standing?.Edition.Number ?? 0) + 1,
        Sha256 = loaded.Sha256,
        ShippedSha256 = book.Shipped!.Sha256,
        Own = book.Own,
        Kind = wish.Kind,
        AdoptedAt = clock.GetCurrentInstant(),
        By = wish.Actor?.Account,
        ByName = wish.Actor?.Name ?? TheProgram,
        Why = wish.Why,
        Changes = standing is null ? [] : BookChanges.Between(standing.Loaded, loaded),
    };
}
