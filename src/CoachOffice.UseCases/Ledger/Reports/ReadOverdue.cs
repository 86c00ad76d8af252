using CoachOffice.Data;
using CoachOffice.Domain.Ledger;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Ledger.Reports;

/// <summary>What payers owe for longer than the practice's terms say.</summary>
public sealed class ReadOverdue(OfficeDb db, LedgerBook book)
{
    /// <summary>Who owed something on or before a day, with what is open of it. Begins at the balances, which are few.</summary>
    public async Task<IReadOnlyList<OverdueView>> SinceBefore(LocalDate day, CancellationToken stop = default)
    {
        var owing = await (from entry in db.LedgerEntries
                           from posting in entry.Postings
                           where posting.Account == LedgerAccount.Receivable
                           group posting.AmountMinor by entry.PayerId into payer
                           where payer.Sum() > 0
                           select payer.Key).ToListAsync(stop);
        return [.. (await Of(owing, stop)).Where(o => o.PayBy <= day)];
    }

    /// <summary>What one payer owes, or null when nothing is open.</summary>
    public async Task<OverdueView?> Of(PayerId payer, CancellationToken stop = default) => (await Of([payer], stop)).SingleOrDefault();

    private async Task<IReadOnlyList<OverdueView>> Of(IReadOnlyList<PayerId> payers, CancellationToken stop)
    {
        var (terms, currency) = (await book.Terms(stop), await book.Currency(stop));
        var lines = (await db.LedgerEntries.AsNoTracking().Include(e => e.Postings).Where(e => payers.Contains(e.PayerId)).OrderBy(e => e.At).ThenBy(e => e.Id).ToListAsync(stop)).ToLookup(e => e.PayerId);
        var found = new List<OverdueView>();
        foreach (var payer in payers)
        {
            var open = Settlement.Of([.. lines[payer].Select(OwedLines.Of)]).Open.ToList();
            if (open.Count == 0) continue;
            var texts = lines[payer].ToDictionary(e => e.Id, e => e.Text);
            found.Add(new OverdueView(payer, open[0].Line.On.PlusDays(terms.PaymentDays), new Money(open.Sum(o => o.OpenMinor), currency))
            {
                OldestOn = open[0].Line.On,
                Lines = [.. open.Select(o => new OverdueLine(o.Line.On, texts[o.Line.Id], new Money(o.OpenMinor, currency)))],
            });
        }

        return found;
    }
}

/// <summary>What one payer owes.</summary>
/// <param name="Payer">Who.</param>
/// <param name="PayBy">The day the oldest part was to be paid by.</param>
/// <param name="Amount">All that is open.</param>
public sealed record OverdueView(PayerId Payer, LocalDate PayBy, Money Amount)
{
    /// <summary>Day of the oldest open line.</summary>
    public required LocalDate OldestOn { get; init; }

    /// <summary>Open lines, oldest first.</summary>
    public required IReadOnlyList<OverdueLine> Lines { get; init; }
}

/// <summary>One open line.</summary>
public sealed record OverdueLine(LocalDate On, string Text, Money Open);
