using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Ledger.Packages;

/// <summary>Ends packages whose last day is over: what is left of their price is earned. One with lessons still to be marked waits for them.</summary>
public sealed class EndPackages(OfficeDb db, LedgerBook book, PackageShelf shelf, PracticeClock clock, AuditTrail trail)
{
    /// <summary>How many ended; a second run on the same day finds none.</summary>
    public async Task<int> Once(CancellationToken stop = default)
    {
        var today = await clock.Today(stop);
        var over = await db.Packages.AsNoTracking().Where(p => p.ClosedAt == null && p.ValidUntil < today && WithRest().Contains(p.Id)).Select(p => new { p.Id, p.PayerId }).ToListAsync(stop);
        var ended = 0;
        foreach (var package in over)
        {
            db.ChangeTracker.Clear();
            if (await End(package.Id, package.PayerId, today, stop)) ended++;
        }

        return ended;
    }

    // Packages with something not yet earned; all others are over for good.
    private IQueryable<PackageId> WithRest() =>
        from entry in db.LedgerEntries
        where entry.PackageId != null
        from posting in entry.Postings
        where posting.Account == LedgerAccount.Prepaid
        group posting.AmountMinor by entry.PackageId!.Value into package
        where package.Sum() != 0
        select package.Key;

    private async Task<bool> End(PackageId id, PayerId payer, LocalDate today, CancellationToken stop)
    {
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        await book.Hold(payer, stop);
        var package = await db.Packages.SingleAsync(p => p.Id == id, stop);
        var credits = await shelf.CreditsOf(package, stop);
        if (package.ClosedAt is not null || !package.HasEndedBy(today) || credits.Reserved > 0 || credits.Prepaid.IsZero) return false;
        var left = credits.IsEnded ? 0 : credits.Left;
        var facts = await book.Facts(payer, Actor.Clock, stop: stop) with { PackageId = id, StudentId = package.StudentId, Text = $"{package.Name} ended with {left} of {package.Lessons} lessons left" };
        book.Add(EntryKind.PackageEnd, facts, Movements.Earned(credits.Prepaid, new TaxRate(package.TaxBasisPoints)));
        trail.Add(Actor.Clock, "package-ended", AuditSubject.Of(payer), $"package:{id.Value:N}");
        if (await db.TrySave(stop) != Saved.Yes) return false;
        await transaction.CommitAsync(stop);
        return true;
    }
}
