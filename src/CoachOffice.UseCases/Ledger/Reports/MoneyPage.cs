using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Ledger.Reports;

/// <summary>Who owes what, and for how long.</summary>
public sealed class MoneyPage(OfficeDb db, LedgerBook book, PracticeClock clock)
{
    /// <summary>As it is today.</summary>
    public async Task<Outcome<MoneyView>> Now(Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTakePayments) return NotAllowed.To("see who owes what");
        var rows = await Rows(await book.Currency(stop), stop);
        var zero = Money.Zero(await book.Currency(stop));
        var owing = rows.Where(r => r.Balance.MinorUnits > 0).OrderByDescending(r => r.DaysOverdue).ThenByDescending(r => r.Balance.MinorUnits).ThenBy(r => r.Name, StringComparer.Ordinal).ToList();
        var held = rows.Where(r => r.Balance.MinorUnits < 0).OrderBy(r => r.Balance.MinorUnits).ThenBy(r => r.Name, StringComparer.Ordinal).ToList();
        return new MoneyView(owing, held, owing.Aggregate(zero, (sum, r) => sum + r.Balance), owing.Aggregate(zero, (sum, r) => sum + r.Overdue), held.Aggregate(zero, (sum, r) => sum - r.Balance));
    }

    private async Task<IReadOnlyList<OwedRow>> Rows(Currency currency, CancellationToken stop)
    {
        var sums = await (from entry in db.LedgerEntries
                          from posting in entry.Postings
                          where posting.Account == LedgerAccount.Receivable
                          group posting.AmountMinor by entry.PayerId into payer
                          where payer.Sum() != 0
                          select new { payer.Key, Sum = payer.Sum() }).ToListAsync(stop);
        var ids = sums.Select(s => s.Key).ToList();
        var names = await db.Payers.Where(p => ids.Contains(p.Id)).ToDictionaryAsync(p => p.Id, p => p.Name, stop);
        var owing = sums.Where(s => s.Sum > 0).Select(s => s.Key).ToList();
        var lines = (await db.LedgerEntries.AsNoTracking().Include(e => e.Postings).Where(e => owing.Contains(e.PayerId)).OrderBy(e => e.At).ThenBy(e => e.Id).ToListAsync(stop)).ToLookup(e => e.PayerId);
        var (today, days) = (await clock.Today(stop), (await book.Terms(stop)).PaymentDays);
        return
        [
            .. from sum in sums
               let settled = Settlement.Of([.. lines[sum.Key].Select(OwedLines.Of)])
               select new OwedRow(sum.Key, names[sum.Key], new Money(sum.Sum, currency), new Money(settled.OverdueMinor(today, days), currency), settled.DaysOverdue(today, days)),
        ];
    }
}
