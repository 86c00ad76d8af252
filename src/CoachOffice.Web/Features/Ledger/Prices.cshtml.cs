using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Ledger.Packages;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Ledger;

/// <summary>The price list: offerings, and packages.</summary>
public sealed class PricesModel(ReadPriceList read, ArchivePackageOffer archive) : OfficePage
{
    public PriceList List { get; private set; } = null!;

    public bool MayOwn => Actor.MayOwn;

    public async Task OnGetAsync() => List = await read.Now();

    public async Task<IActionResult> OnPostArchiveAsync(Guid offer, bool archived)
    {
        if (offer == Guid.Empty) return NotFound();
        var set = await archive.Set(PackageOfferId.From(offer), archived, Actor);
        if (set.Succeeded) return Done(OfficeLinks.Prices, archived ? "Taken off the price list; what was sold stays." : "Back on the price list.");
        List = await read.Now();
        return Refuse(set.Refusals, "");
    }
}
