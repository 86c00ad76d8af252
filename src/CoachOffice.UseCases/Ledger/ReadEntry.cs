using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Ledger;

/// <summary>One entry of the ledger.</summary>
public sealed class ReadEntry(OfficeDb db, LedgerBook book)
{
    /// <summary>The entry, or a refusal that there is none.</summary>
    public async Task<Outcome<EntryView>> Of(EntryId id, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTakePayments) return NotAllowed.To("see entries");
        var entry = await db.LedgerEntries.AsNoTracking().Include(e => e.Postings).SingleOrDefaultAsync(e => e.Id == id, stop);
        if (entry is null) return new Refusal("entry-not-found", "There is no such entry.");
        var payer = await db.Payers.Where(p => p.Id == entry.PayerId).Select(p => p.Name).SingleAsync(stop);
        return new EntryView(entry, EntryWords.Of(entry), payer, new Money(entry.SumOn(LedgerAccount.Receivable), await book.Currency(stop)));
    }
}
