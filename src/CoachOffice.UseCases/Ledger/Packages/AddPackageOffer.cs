using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Ledger.Packages;

/// <summary>Puts a package on the price list.</summary>
public sealed class AddPackageOffer(OfficeDb db, LedgerBook book, PracticeClock clock, AuditTrail trail)
{
    /// <summary>The package, or why not; the same form again adds none.</summary>
    public async Task<Outcome<PackageOfferId>> From(PackageOfferId id, PackageOfferForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("change the price list");
        if (!form.Read(await book.Currency(stop)).TryGet(out var details)) return Outcome<PackageOfferId>.Refused(form.Read(await book.Currency(stop)).Refusals);
        if (await db.PackageOffers.AnyAsync(o => o.Id == id, stop)) return id;
        db.PackageOffers.Add(PackageOffer.Of(id, details, clock.Now));
        trail.Add(actor, "package-offer-added", AuditSubject.Of(id));
        await db.TrySave(stop);
        return id;
    }
}
