using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Ledger.Packages;

/// <summary>How packages stand, counted from the ledger and from the seats that are booked; what this transaction added but did not save yet counts too.</summary>
public sealed class PackageShelf(OfficeDb db, LedgerBook book, PracticeClock clock)
{
    /// <summary>How each of these stands.</summary>
    public async Task<IReadOnlyDictionary<PackageId, PackageCredits>> CreditsOf(IReadOnlyCollection<Package> packages, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(packages);
        var ids = packages.Select(p => (PackageId?)p.Id).ToList();
        await db.LedgerEntries.Include(e => e.Postings).Where(e => ids.Contains(e.PackageId)).LoadAsync(stop);
        await db.Seats.Where(s => ids.Contains(s.PackageId) && (s.Status == SeatStatus.Held || s.Status == SeatStatus.Booked)).LoadAsync(stop);
        var currency = await book.Currency(stop);
        var entries = db.LedgerEntries.Local.Where(e => e.PackageId is not null).ToLookup(e => e.PackageId!.Value);
        var seats = db.Seats.Local.Where(s => s is { PackageId: not null, IsOpen: true }).ToLookup(s => s.PackageId!.Value);
        return packages.ToDictionary(p => p.Id, p => Count(p, [.. entries[p.Id]], seats[p.Id].Count(), currency));
    }

    /// <summary>How one stands.</summary>
    public async Task<PackageCredits> CreditsOf(Package package, CancellationToken stop = default) => (await CreditsOf([package], stop))[package.Id];

    /// <summary>
    /// The package a lesson is taken from, or null. A student's own before one the household shares, so that what only one may use is used first; among
    /// these the one that ends first.
    /// </summary>
    public async Task<Package?> Fitting(Student student, OfferingId offering, LocalDate day, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(student);
        var (id, payer) = (student.Id, student.PayerId);
        var all = await db.Packages.Where(p => p.ClosedAt == null && (p.StudentId == id || (p.IsShared && p.PayerId == payer))).ToListAsync(stop);
        foreach (var holder in all.Select(p => p.PayerId).Distinct().OrderBy(p => p.Value)) await book.Hold(holder, stop);
        var fitting = all.Where(p => p.PaysFor(offering, day)).ToList();
        var credits = await CreditsOf(fitting, stop);
        return fitting.Where(p => credits[p.Id] is { Free: > 0, IsEnded: false })
            .OrderBy(p => p.StudentId == id ? 0 : 1).ThenBy(p => p.ValidUntil ?? LocalDate.MaxIsoValue).ThenBy(p => p.SoldOn).ThenBy(p => p.Id.Value).FirstOrDefault();
    }

    /// <summary>Closes a package whose sale is taken back, or says why it cannot be: something of it was used or is booked.</summary>
    internal async Task<Refusal?> Unsell(PackageId id, CancellationToken stop)
    {
        var package = await db.Packages.SingleAsync(p => p.Id == id, stop);
        var credits = await CreditsOf(package, stop);
        if (credits.Reserved > 0) return new("package-booked", "Lessons of this package are booked. Cancel them first.");
        if (credits.Used > 0 || credits.IsEnded || package.ClosedAt is not null) return new("package-used", "Lessons of this package were used, or it ended. Give back the lessons that are left instead.");
        package.Close(clock.Now);
        return null;
    }

    private static PackageCredits Count(Package package, IReadOnlyList<LedgerEntry> entries, int reserved, Currency currency)
    {
        var reversed = entries.Where(e => e.Reverses is not null).Select(e => e.Reverses!.Value).ToHashSet();
        int Standing(EntryKind kind) => entries.Count(e => e.Kind == kind && !reversed.Contains(e.Id));
        return new PackageCredits(package.Lessons, Standing(EntryKind.CreditUse), reserved, new Money(-entries.Sum(e => e.SumOn(LedgerAccount.Prepaid)), currency), Standing(EntryKind.PackageEnd) > 0);
    }
}
