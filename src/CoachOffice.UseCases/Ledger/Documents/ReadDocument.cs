using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Ledger.Documents;

/// <summary>A receipt or statement as it was handed out.</summary>
public sealed class ReadDocument(OfficeDb db)
{
    /// <summary>The document, or a refusal that there is none.</summary>
    public async Task<Outcome<DocumentView>> Of(DocumentId id, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTakePayments) return NotAllowed.To("see receipts");
        var document = await db.LedgerDocuments.AsNoTracking().SingleOrDefaultAsync(d => d.Id == id, stop);
        if (document is null) return new Refusal("document-not-found", "There is no such receipt or statement.");
        var reversed = document.EntryId is { } entry ? await db.LedgerEntries.Where(e => e.Reverses == entry).Select(e => (LocalDate?)e.On).SingleOrDefaultAsync(stop) : null;
        return new DocumentView(document, reversed, await db.Payers.AnyAsync(p => p.Id == document.PayerId && p.Email != "", stop));
    }
}
