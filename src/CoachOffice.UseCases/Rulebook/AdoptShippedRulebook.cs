using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Writing;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Takes the rulebook that came with the program into force below the practice's own changes, once for each text: one this practice had before is not taken again, so starting an older program changes nothing.</summary>
public sealed class AdoptShippedRulebook(OfficeDb db, ShippedRules shipped, StandingBooks books, EditionPress press, IClock clock)
{
    /// <summary>The book in force, or every fault of the shipped files or of the own changes on top of them; a book in force before goes on serving then.</summary>
    public async Task<Outcome<AdoptedBook>> AtStartUp(CancellationToken stop = default)
    {
        var text = RulebookText.FromDirectory(shipped.Directory);
        if (!text.TryGet(out var files)) return Refused(text.Faults);
        var bundle = files.Bundle();
        var hash = ShippedTexts.HashOf(bundle);
        var known = await db.ShippedBooks.AnyAsync(b => b.Sha256 == hash, stop);

        // The very same files need not be read and checked again at every start.
        if (known && await db.BooksInForce.AsNoTracking().SingleOrDefaultAsync(stop) is { } inForce) return new AdoptedBook(inForce.Sha256, false);
        var alone = books.Trial.On(new ShippedBase(hash, files), []);
        if (alone.Loaded is null) return Refused(alone.Faults);
        if (!known) db.ShippedBooks.Add(new ShippedBook(hash, bundle, clock.GetCurrentInstant()));
        return await books.InForce(stop) is { } standing ? await Below(standing, alone, stop) : await First(alone, stop);
    }

    private async Task<Outcome<AdoptedBook>> First(TriedBook book, CancellationToken stop)
    {
        // Another node that starts at the same moment may have been first with the very same book: then there is nothing left to do.
        await press.Take(book, null, EditionWish.Shipped, stop);
        return new AdoptedBook(book.Loaded!.Sha256, true);
    }

    private async Task<Outcome<AdoptedBook>> Below(StandingBook standing, TriedBook alone, CancellationToken stop)
    {
        var book = standing.Loaded.Own.AreNone ? alone : books.Trial.On(alone.Shipped!, OwnFiles.Of(standing.Loaded, [], []));
        if (book.Loaded is null)
        {
            // The new book is kept and waits below: as soon as the own changes fit it, they are taken with it.
            await db.TrySave(stop);
            return Refused(book.Faults);
        }

        // Other words for the same rules need no edition of their own.
        var isNew = BookChanges.Between(standing.Loaded, book.Loaded).Count > 0;
        if (isNew) await press.Take(book, standing, EditionWish.Shipped, stop);
        else await db.TrySave(stop);
        return new AdoptedBook(book.Loaded.Sha256, isNew);
    }

    private static Outcome<AdoptedBook> Refused(IReadOnlyList<Fault> faults) =>
        Outcome<AdoptedBook>.Refused([.. faults.Select(f => new Refusal(TriedBook.Code, f.ToString(), f.File))]);
}
