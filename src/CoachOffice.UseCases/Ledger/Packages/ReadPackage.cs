using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Ledger.Packages;

/// <summary>One package somebody bought.</summary>
public sealed class ReadPackage(OfficeDb db, PackageRows rows)
{
    /// <summary>The package, or a refusal that there is none.</summary>
    public async Task<Outcome<PackageRow>> Of(PackageId id, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTakePayments) return NotAllowed.To("see packages");
        var payer = await db.Packages.Where(p => p.Id == id).Select(p => (PayerId?)p.PayerId).SingleOrDefaultAsync(stop);
        if (payer is null) return PackageRefusals.NotFound;
        return (await rows.Of(payer.Value, stop)).Single(r => r.Package.Id == id);
    }
}
