using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Ledger.Packages;

/// <summary>Sells a package from the price list: to be paid now or later, and owed in lessons.</summary>
public sealed class SellPackage(OfficeDb db, MoneyDoor door, LedgerBook book, INewIds ids)
{
    /// <summary>The entry of the sale, or why not; the same form again gives the same one.</summary>
    public async Task<Outcome<EntryId>> From(SaleForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTakePayments) return NotAllowed.To("sell packages");
        return await door.Write(new MoneyDeed(form.Id, form.PayerId, actor, "package-sold"), facts => Sell(form, facts, stop), stop);
    }

    private async Task<Outcome<LedgerEntry>> Sell(SaleForm form, EntryFacts facts, CancellationToken stop)
    {
        var offer = await db.PackageOffers.SingleOrDefaultAsync(o => o.Id == form.OfferId && o.ArchivedAt == null, stop);
        if (offer is null) return new Refusal("package-gone", "Pick a package from the price list.", nameof(form.OfferId));
        if (!await db.Students.AnyAsync(s => s.Id == form.StudentId && s.PayerId == form.PayerId && s.ErasedAt == null, stop))
            return new Refusal("package-student", "Pick a student this payer pays for.", nameof(form.StudentId));
        var package = Package.Sell(PackageId.From(ids.Next()), offer, form.PayerId, form.StudentId, facts.On);
        db.Packages.Add(package);
        var line = (await book.Terms(stop)).TaxRule.Of(new TaxLine(offer.Name, new Money(offer.PriceMinor, await book.Currency(stop)), new TaxRate(offer.TaxBasisPoints)));
        return book.Add(EntryKind.PackageSale, facts with { PackageId = package.Id, StudentId = form.StudentId, Text = offer.Name }, Movements.Sale(line));
    }
}
