using CoachOffice.Data;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Writing;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Reads editions of the rulebook, the one in force above all.</summary>
public sealed class StandingBooks(OfficeDb db, BookShelf shelf, BookTrial trial)
{
    /// <summary>Tries what is to take their place.</summary>
    public BookTrial Trial => trial;

    /// <summary>The edition in force; null before the first.</summary>
    public async Task<StandingBook?> InForce(CancellationToken stop = default)
    {
        if (await db.BooksInForce.SingleOrDefaultAsync(stop) is not { } row) return null;
        var edition = await db.RulebookEditions.AsNoTracking().SingleAsync(e => e.Number == row.Edition, stop);
        var below = new ShippedBase(edition.ShippedSha256, await Shipped(edition.ShippedSha256, stop));
        var loaded = Read(edition, below.Files);
        return await Waiting(edition, stop) is { } waiting ? new StandingBook(row, edition, loaded, [waiting, below]) : new StandingBook(row, edition, loaded, [below]);
    }

    /// <summary>The edition in force; throws <see cref="InvalidOperationException"/> before the first was adopted at start-up.</summary>
    public async Task<StandingBook> MustStand(CancellationToken stop = default) =>
        await InForce(stop) ?? throw new InvalidOperationException("No rulebook was adopted: AdoptShippedRulebook runs at start-up.");

    /// <summary>An edition's book; null when there is no such edition.</summary>
    public async Task<LoadedRulebook?> Numbered(int number, CancellationToken stop = default) =>
        await db.RulebookEditions.AsNoTracking().SingleOrDefaultAsync(e => e.Number == number, stop) is { } edition
            ? Read(edition, await Shipped(edition.ShippedSha256, stop))
            : null;

    /// <summary>The files of an edition's own changes.</summary>
    public static IReadOnlyList<KeyValuePair<string, string>> OwnOf(string own) => own.Length == 0 ? [] : [KeyValuePair.Create(OwnFiles.Kept, own)];

    // A newer program brought it, and the own changes did not fit it then.
    private async Task<ShippedBase?> Waiting(RulebookEdition edition, CancellationToken stop)
    {
        var newest = await db.ShippedBooks.OrderByDescending(b => b.KeptAt).ThenByDescending(b => b.Sha256 == edition.ShippedSha256).Select(b => b.Sha256).FirstAsync(stop);
        return newest == edition.ShippedSha256 ? null : new ShippedBase(newest, await Shipped(newest, stop));
    }

    private Task<RulebookText> Shipped(string sha256, CancellationToken stop) => shelf.Shipped(sha256, () => db.Shipped(sha256, stop));

    private LoadedRulebook Read(RulebookEdition edition, RulebookText shipped) => shelf.Edition(edition, () =>
    {
        var read = shelf.Read(shipped.With(OwnOf(edition.Own)));
        return read.TryGet(out var loaded) ? loaded : throw new InvalidOperationException($"Edition {edition.Number} of the rulebook is no longer readable: {read.Faults[0]}");
    });
}
