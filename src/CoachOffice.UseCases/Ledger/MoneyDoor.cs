using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Ledger;

/// <summary>What every entry a person writes has alike: one transaction, nobody else at the same payer, the same form once, an audit row.</summary>
public sealed class MoneyDoor(OfficeDb db, LedgerBook book, AuditTrail trail)
{
    /// <summary>Runs what adds the entry; it gives the entry, or says what stands against it.</summary>
    public async Task<Outcome<EntryId>> Write(MoneyDeed deed, Func<EntryFacts, Task<Outcome<LedgerEntry>>> write, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(deed);
        ArgumentNullException.ThrowIfNull(write);
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        await book.Hold(deed.Payer, stop);
        if (!await db.Payers.AnyAsync(p => p.Id == deed.Payer, stop)) return PayerRefusals.NotFound;
        var sent = await db.LedgerEntries.AsNoTracking().Include(e => e.Postings).SingleOrDefaultAsync(e => e.Id == deed.Id, stop);
        var outcome = await write(await book.Facts(deed.Payer, deed.Actor, deed.Id, stop));
        if (sent is not null)
        {
            db.ChangeTracker.Clear();
            return SentBefore(sent, outcome);
        }

        if (!outcome.TryGet(out var entry))
        {
            db.ChangeTracker.Clear();
            return Outcome<EntryId>.Refused(outcome.Refusals);
        }

        trail.Add(deed.Actor, deed.Action, AuditSubject.Of(deed.Payer), $"entry:{entry.Id.Value:N}");
        if (await db.TrySave(stop) != Saved.Yes) return Busy;
        await transaction.CommitAsync(stop);
        return entry.Id;
    }

    private static Refusal Busy { get; } = new("changed-meanwhile", "Someone else wrote to this account at the same moment; look at it again, then repeat it.");

    // The same form again is the same entry, and says so quietly; other figures under its number are no repetition.
    private static Outcome<EntryId> SentBefore(LedgerEntry sent, Outcome<LedgerEntry> again) =>
        again.TryGet(out var entry) && (entry.Kind != sent.Kind || entry.PayerId != sent.PayerId || entry.SumOn(LedgerAccount.Receivable) != sent.SumOn(LedgerAccount.Receivable))
            ? new Refusal("form-used", "This form was sent before with another amount, and that was written. Open the account again to see it.")
            : sent.Id;
}
