using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Ledger.Documents;

/// <summary>Writes the receipt of a payment: what it paid, and the tax in that, rate by rate. A payment has one receipt, whoever asks how often.</summary>
public sealed class IssueReceipt(OfficeDb db, LedgerBook book, DocumentPress press, AuditTrail trail)
{
    /// <summary>The receipt, or why not.</summary>
    public async Task<Outcome<DocumentId>> For(EntryId id, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTakePayments) return NotAllowed.To("write receipts");
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var payment = await db.LedgerEntries.AsNoTracking().Include(e => e.Postings).SingleOrDefaultAsync(e => e.Id == id && e.Kind == EntryKind.Payment, stop);
        if (payment is null) return new Refusal("payment-not-found", "There is no such payment.");
        await book.Hold(payment.PayerId, stop);
        if (await Written(id, stop) is { } written) return written;
        if (await db.LedgerEntries.AnyAsync(e => e.Reverses == id, stop)) return new Refusal("payment-reversed", "This payment was reversed, so there is nothing to give a receipt for.");
        var entries = await db.LedgerEntries.AsNoTracking().Include(e => e.Postings).Where(e => e.PayerId == payment.PayerId).OrderBy(e => e.At).ThenBy(e => e.Id).ToListAsync(stop);
        var content = Paid(payment, entries, await press.Heads(payment.PayerId, payment.On, stop));
        var receipt = await press.Print(DocumentKind.Receipt, new DocumentDraft(payment.PayerId, id, -payment.SumOn(LedgerAccount.Receivable), content), actor, stop);
        trail.Add(actor, "receipt-written", AuditSubject.Of(receipt.Id), $"number:{receipt.Year}-{receipt.Number}");
        if (await db.TrySave(stop) != Saved.Yes) return new Refusal("changed-meanwhile", "Someone else wrote this receipt at the same moment; open the account again to see it.");
        await transaction.CommitAsync(stop);
        return receipt.Id;
    }

    private Task<DocumentId?> Written(EntryId id, CancellationToken stop) => db.LedgerDocuments.Where(d => d.EntryId == id).Select(d => (DocumentId?)d.Id).SingleOrDefaultAsync(stop);

    private static DocumentContent Paid(LedgerEntry payment, IReadOnlyList<LedgerEntry> entries, DocumentContent heads)
    {
        var byId = entries.ToDictionary(e => e.Id);
        var covers = Settlement.Of([.. entries.Select(OwedLines.Of)]).Covers.Where(c => c.Paid == payment.Id).ToList();
        var ahead = -payment.SumOn(LedgerAccount.Receivable) - covers.Sum(c => c.AmountMinor);
        return heads with
        {
            Lines = [.. covers.Select(c => Line(byId[c.Owed], c)), .. ahead > 0 ? [new DocumentLine(payment.On, "Paid ahead, on account", ahead)] : Array.Empty<DocumentLine>()],
            Taxes = TaxShare.Sum(covers.SelectMany(c => TaxShare.Of(byId[c.Owed], c, Currency.Of(heads.Currency)))),
            Method = payment.Method,
            Reference = payment.Reference,
        };
    }

    private static DocumentLine Line(LedgerEntry owed, Cover cover) =>
        new(owed.On, EntryWords.Of(owed) + (cover.AmountMinor < owed.SumOn(LedgerAccount.Receivable) ? " (part)" : ""), cover.AmountMinor);
}
