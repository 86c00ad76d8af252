using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Ledger.Packages;

/// <summary>Changes a package on the price list; what was sold stays as it was sold.</summary>
public sealed class ChangePackageOffer(OfficeDb db, LedgerBook book, AuditTrail trail)
{
    /// <summary>The package, or why not.</summary>
    public async Task<Outcome<PackageOfferId>> To(PackageOfferId id, int version, PackageOfferForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("change the price list");
        var read = form.Read(await book.Currency(stop));
        if (!read.TryGet(out var details)) return Outcome<PackageOfferId>.Refused(read.Refusals);
        var offer = await db.PackageOffers.SingleOrDefaultAsync(o => o.Id == id, stop);
        if (offer is null) return PackageRefusals.NotFound;
        if (offer.Version != version) return PackageRefusals.Busy;
        offer.Change(details);
        trail.Add(actor, "package-offer-changed", AuditSubject.Of(id));
        return await db.TrySave(stop) == Saved.Yes ? id : PackageRefusals.Busy;
    }
}
