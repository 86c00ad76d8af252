using CoachOffice.Data;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Ledger.Packages;

/// <summary>The price list: what is offered, and packages.</summary>
public sealed class ReadPriceList(OfficeDb db, LedgerBook book)
{
    /// <summary>As it is today.</summary>
    public async Task<PriceList> Now(CancellationToken stop = default)
    {
        var offerings = await db.Offerings.AsNoTracking().Where(o => o.ArchivedAt == null).OrderBy(o => o.Name).ThenBy(o => o.Id).ToListAsync(stop);
        var packages = await db.PackageOffers.AsNoTracking().OrderBy(o => o.Name).ThenBy(o => o.Id).ToListAsync(stop);
        return new PriceList(await book.Currency(stop), (await book.Terms(stop)).TaxMode, offerings, [.. packages.OrderBy(p => p.ArchivedAt is null ? 0 : 1)]);
    }
}
