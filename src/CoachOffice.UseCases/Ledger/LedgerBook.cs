using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Ledger;

/// <summary>The pen all entries are written with, into the caller's transaction: today, the practice's currency, who acts.</summary>
public sealed class LedgerBook(OfficeDb db, PracticeClock clock, ReadPractice practice, INewIds ids)
{
    private MoneyTerms? _terms;

    /// <summary>The practice's currency.</summary>
    public async Task<Currency> Currency(CancellationToken stop = default) => Domain.Ledger.Currency.Of((await practice.Now(stop))!.Currency);

    /// <summary>The terms in force; the usual ones until somebody decides.</summary>
    public async Task<MoneyTerms> Terms(CancellationToken stop = default) => _terms ??= await db.MoneyTerms.AsNoTracking().SingleOrDefaultAsync(stop) ?? MoneyTerms.Usual(Guid.Empty);

    /// <summary>What every entry says beside its amounts.</summary>
    public async Task<EntryFacts> Facts(PayerId payer, Actor actor, EntryId? id = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        return new EntryFacts { Id = id ?? EntryId.From(ids.Next()), At = clock.Now, On = await clock.Today(stop), PayerId = payer, By = actor.Name };
    }

    /// <summary>Adds an entry; nothing is saved here.</summary>
    public LedgerEntry Add(EntryKind kind, EntryFacts facts, IReadOnlyList<Movement> movements)
    {
        var entry = LedgerEntry.Write(kind, facts, movements);
        db.LedgerEntries.Add(entry);
        return entry;
    }

    /// <summary>Adds the entry that takes another one back; nothing is saved here.</summary>
    public async Task<LedgerEntry> TakeBack(LedgerEntry entry, EntryFacts facts, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(entry);
        var reversal = entry.Reverse(facts, await Currency(stop));
        db.LedgerEntries.Add(reversal);
        return reversal;
    }

    /// <summary>
    /// Makes whoever else writes about this payer wait until this transaction ends: what is owed and what is left of a package is then asked and changed in
    /// one step. Changes nothing; on SQLite a transaction begins as the only writer anyway.
    /// </summary>
    public Task Hold(PayerId payer, CancellationToken stop = default) =>
        db.Payers.Where(p => p.Id == payer).ExecuteUpdateAsync(p => p.SetProperty(x => x.AddedAt, x => x.AddedAt), stop);

    /// <summary>What a payer owes; below zero = money on account. Always the sum.</summary>
    public async Task<Money> Balance(PayerId payer, CancellationToken stop = default)
    {
        var postings = from entry in db.LedgerEntries
                       where entry.PayerId == payer
                       from posting in entry.Postings
                       where posting.Account == LedgerAccount.Receivable
                       select posting.AmountMinor;
        return new Money(await postings.SumAsync(stop), await Currency(stop));
    }
}
