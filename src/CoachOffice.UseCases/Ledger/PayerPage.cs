using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Ledger.Packages;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Ledger;

/// <summary>Everything about one payer's money on one page.</summary>
public sealed class PayerPage(OfficeDb db, LedgerBook book, PackageRows packages, PracticeClock clock)
{
    /// <summary>Entries at first sight.</summary>
    public const int Short = 50;

    /// <summary>The account, or a refusal that there is none.</summary>
    public async Task<Outcome<PayerView>> Of(PayerId id, bool all, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTakePayments) return NotAllowed.To("see accounts of payers");
        var payer = await db.Payers.AsNoTracking().SingleOrDefaultAsync(p => p.Id == id, stop);
        if (payer is null) return PayerRefusals.NotFound;
        var entries = await db.LedgerEntries.AsNoTracking().Include(e => e.Postings).Where(e => e.PayerId == id).OrderBy(e => e.At).ThenBy(e => e.Id).ToListAsync(stop);
        var (currency, today, days) = (await book.Currency(stop), await clock.Today(stop), (await book.Terms(stop)).PaymentDays);
        var settled = Settlement.Of([.. entries.Select(OwedLines.Of)]);
        var documents = await db.LedgerDocuments.AsNoTracking().Where(d => d.PayerId == id).OrderByDescending(d => d.At).ThenByDescending(d => d.Id).ToListAsync(stop);
        return new PayerView
        {
            Payer = payer,
            Today = today,
            Balance = new Money(entries.Sum(e => e.SumOn(LedgerAccount.Receivable)), currency),
            Overdue = new Money(settled.OverdueMinor(today, days), currency),
            DaysOverdue = settled.DaysOverdue(today, days),
            Students = await Students(id, stop),
            Packages = await packages.Of(id, stop),
            Entries = await Rows(all ? entries : [.. entries.TakeLast(Short)], entries, documents, stop),
            HasMore = !all && entries.Count > Short,
            Documents = [.. documents.Select(d => new DocumentRow(d.Id, d.Name, d.IssuedOn, new Money(d.TotalMinor, Currency.Of(d.Content.Currency))))],
            Offers = await db.PackageOffers.AsNoTracking().Where(o => o.ArchivedAt == null).OrderBy(o => o.Name).ThenBy(o => o.Id).ToListAsync(stop),
        };
    }

    private async Task<IReadOnlyList<EntryRow>> Rows(IReadOnlyList<LedgerEntry> shown, IReadOnlyList<LedgerEntry> all, IReadOnlyList<LedgerDocument> documents, CancellationToken stop)
    {
        var currency = await book.Currency(stop);
        var reversed = all.Where(e => e.Reverses is not null).Select(e => e.Reverses!.Value).ToHashSet();
        var receipts = documents.Where(d => d.EntryId is not null).ToDictionary(d => d.EntryId!.Value, d => d.Id);
        var named = shown.Select(e => e.StudentId).OfType<StudentId>().Distinct().ToList();
        var names = await db.Students.Where(s => named.Contains(s.Id)).ToDictionaryAsync(s => s.Id, s => (s.GivenName + " " + s.FamilyName).Trim(), stop);
        return
        [
            .. shown.Reverse().Select(e => new EntryRow
            {
                Entry = e,
                Words = EntryWords.Of(e),
                Amount = e.Postings.Any(p => p.Account == LedgerAccount.Receivable) ? new Money(e.SumOn(LedgerAccount.Receivable), currency) : null,
                StudentName = e.StudentId is { } student ? names[student] : "",
                IsUndone = e.Reverses is not null || reversed.Contains(e.Id),
                MayReverse = !reversed.Contains(e.Id) && ReverseEntry.May(e),
                Receipt = receipts.TryGetValue(e.Id, out var receipt) ? receipt : null,
            }),
        ];
    }

    private async Task<IReadOnlyList<(StudentId Id, string Name)>> Students(PayerId id, CancellationToken stop)
    {
        var students = await db.Students.AsNoTracking().Where(s => s.PayerId == id && s.ErasedAt == null).OrderBy(s => s.SearchText).ThenBy(s => s.Id).ToListAsync(stop);
        return [.. students.Select(s => (s.Id, s.FullName))];
    }
}
