using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Ledger.Packages;

/// <summary>Takes a package off the price list, or puts it back; what was sold stays.</summary>
public sealed class ArchivePackageOffer(OfficeDb db, PracticeClock clock, AuditTrail trail)
{
    /// <summary>The package, or why not.</summary>
    public async Task<Outcome<PackageOfferId>> Set(PackageOfferId id, bool archived, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("change the price list");
        var offer = await db.PackageOffers.SingleOrDefaultAsync(o => o.Id == id, stop);
        if (offer is null) return PackageRefusals.NotFound;
        if (archived) offer.Archive(clock.Now);
        else offer.Restore();
        trail.Add(actor, archived ? "package-offer-archived" : "package-offer-restored", AuditSubject.Of(id));
        return await db.TrySave(stop) == Saved.Yes ? id : PackageRefusals.Busy;
    }
}
