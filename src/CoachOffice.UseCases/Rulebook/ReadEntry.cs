using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Writing;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>One entry of an edition as text, and as it was shipped.</summary>
public sealed class ReadEntry(OfficeDb db, StandingBooks books)
{
    /// <summary>The entry in the edition of a number, the one in force when null; a refusal when neither the edition nor its shipped book has it.</summary>
    public async Task<Outcome<EntryView>> Of(EntryId id, int? edition, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(id);
        var number = edition ?? await db.BooksInForce.Select(b => b.Edition).SingleAsync(stop);
        if (await books.Numbered(number, stop) is not { } loaded) return new Refusal("edition-not-found", $"There is no edition {number} of the rulebook.");
        var text = BookEntries.Find(loaded, id);
        var isOwn = loaded.Own.Written.Concat(loaded.Own.Removed).Any(e => e.Id == id);
        var shipped = isOwn ? await Shipped(number, id, stop) : text;
        if (text is null && shipped is null) return new Refusal("entry-not-found", $"Edition {number} of the rulebook has no {id}.");
        return new EntryView { Id = id, Edition = number, Text = text, Shipped = shipped, IsOwn = isOwn };
    }

    private async Task<string?> Shipped(int number, EntryId id, CancellationToken stop)
    {
        var sha256 = await db.RulebookEditions.Where(e => e.Number == number).Select(e => e.ShippedSha256).SingleAsync(stop);
        return BookEntries.Find(RulebookReader.Load(await db.Shipped(sha256, stop)).Value, id);
    }
}
