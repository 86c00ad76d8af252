using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.UseCases.Ledger.Reports;

/// <summary>The ledger of a period for the accountant: one row for each posting, debits above zero. It leaves the office's care, so only an owner takes it, and the history says when.</summary>
public sealed class ExportLedger(OfficeDb db, LedgerBook book, AuditTrail trail, ReadPractice practice)
{
    private static readonly string[] Heads = ["Date", "Entry", "Kind", "What", "Payer", "Account", "Amount", "Currency", "Tax percent", "Method", "Reference", "Receipt", "Reverses", "Written by"];

    /// <summary>The bytes of a CSV file (RFC 4180), or why not.</summary>
    public async Task<Outcome<byte[]>> Of(LocalDate first, LocalDate last, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepBooks) return NotAllowed.To("take the books out of the office");
        if (last < first || first < last.PlusYears(-5)) return new Refusal("export-days", "The last day comes after the first, within five years.", "LastDay");
        var entries = await db.LedgerEntries.AsNoTracking().Include(e => e.Postings).Where(e => e.On >= first && e.On <= last).OrderBy(e => e.On).ThenBy(e => e.At).ThenBy(e => e.Id).ToListAsync(stop);
        var payers = await db.Payers.ToDictionaryAsync(p => p.Id, p => p.Name, stop);
        var receipts = (await db.LedgerDocuments.AsNoTracking().Where(d => d.EntryId != null).ToListAsync(stop)).ToDictionary(d => d.EntryId!.Value, d => d.Name);
        var currency = await book.Currency(stop);
        using var sheet = new CsvSheet();
        sheet.Row(Heads);
        foreach (var entry in entries)
        {
            foreach (var posting in entry.Postings.OrderBy(p => p.Line)) Write(sheet, entry, posting, new Names(payers[entry.PayerId], receipts.GetValueOrDefault(entry.Id, ""), currency));
        }

        trail.Add(actor, "ledger-exported", AuditSubject.Practice((await practice.Now(stop))!.Id), $"from:{LocalDatePattern.Iso.Format(first)} to:{LocalDatePattern.Iso.Format(last)} entries:{entries.Count}");
        await db.SaveChangesAsync(stop);
        return sheet.Bytes();
    }

    private static void Write(CsvSheet sheet, LedgerEntry entry, LedgerPosting posting, Names names)
    {
        sheet.Text(LocalDatePattern.Iso.Format(entry.On)).Text(entry.Id.Value.ToString("N")).Text(Terms.Of(entry.Kind));
        sheet.Text(posting.Text.Length > 0 ? posting.Text : EntryWords.Of(entry)).Text(names.Payer).Text(Terms.Of(posting.Account));
        sheet.Amount(new Money(posting.AmountMinor, names.Currency)).Text(names.Currency.Code).Number(posting.TaxBasisPoints / 100.0);
        sheet.Text(entry.Method is { } method ? Terms.Of(method) : "").Text(entry.Reference).Text(names.Receipt);
        sheet.Text(entry.Reverses?.Value.ToString("N") ?? "").Text(entry.By);
        sheet.End();
    }

    private sealed record Names(string Payer, string Receipt, Currency Currency);
}
