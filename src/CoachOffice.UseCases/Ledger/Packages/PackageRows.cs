using CoachOffice.Data;
using CoachOffice.Domain.Ledger;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Ledger.Packages;

/// <summary>Packages as lists show them.</summary>
public sealed class PackageRows(OfficeDb db, PackageShelf shelf, PracticeClock clock)
{
    /// <summary>So many days before its last one a package is said to end soon.</summary>
    public const int SoonDays = 30;

    /// <summary>All of a payer; those with lessons left first, of them the one that ends first.</summary>
    public async Task<IReadOnlyList<PackageRow>> Of(PayerId payer, CancellationToken stop = default) =>
        [.. (await Rows(await db.Packages.AsNoTracking().Where(p => p.PayerId == payer).ToListAsync(stop), stop)).OrderBy(r => r.IsOpen ? 0 : 1)];

    /// <summary>Those that end soon with lessons nobody has booked, of all payers.</summary>
    public async Task<IReadOnlyList<PackageRow>> EndingSoon(int most, CancellationToken stop = default)
    {
        var today = await clock.Today(stop);
        var last = today.PlusDays(SoonDays);
        var packages = await db.Packages.AsNoTracking().Where(p => p.ClosedAt == null && p.ValidUntil >= today && p.ValidUntil <= last).ToListAsync(stop);
        return [.. (await Rows(packages, stop)).Where(r => r.EndsSoon).Take(most)];
    }

    private async Task<IReadOnlyList<PackageRow>> Rows(IReadOnlyList<Package> packages, CancellationToken stop)
    {
        var last = (await clock.Today(stop)).PlusDays(SoonDays);
        var credits = await shelf.CreditsOf(packages, stop);
        var ids = packages.Select(p => p.StudentId).Distinct().ToList();
        var names = await db.Students.Where(s => ids.Contains(s.Id)).ToDictionaryAsync(s => s.Id, s => (s.GivenName + " " + s.FamilyName).Trim(), stop);
        return
        [
            .. packages.OrderBy(p => p.ValidUntil ?? LocalDate.MaxIsoValue).ThenBy(p => p.SoldOn).ThenBy(p => p.Id.Value)
                .Select(p => new PackageRow(p, names[p.StudentId], credits[p.Id], p.ClosedAt is null && credits[p.Id] is { IsEnded: false, Free: > 0 } && p.ValidUntil <= last)),
        ];
    }
}
