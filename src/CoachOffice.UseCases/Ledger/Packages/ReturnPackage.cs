using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Ledger.Packages;

/// <summary>Takes the unused lessons of a package back: their share of the price, with its tax, stands on account then and can be refunded.</summary>
public sealed class ReturnPackage(OfficeDb db, MoneyDoor door, LedgerBook book, PackageShelf shelf)
{
    /// <summary>The entry, or why not; the same form again gives the same one.</summary>
    public async Task<Outcome<EntryId>> From(ReturnForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepBooks) return NotAllowed.To("take packages back");
        var package = await db.Packages.SingleOrDefaultAsync(p => p.Id == form.Package, stop);
        if (package is null) return PackageRefusals.NotFound;
        return await door.Write(new MoneyDeed(form.Id, package.PayerId, actor, "package-returned"), facts => Return(package, facts, stop), stop);
    }

    private async Task<Outcome<LedgerEntry>> Return(Package package, EntryFacts facts, CancellationToken stop)
    {
        await db.Entry(package).ReloadAsync(stop);
        var credits = await shelf.CreditsOf(package, stop);
        if (credits.Reserved > 0) return new Refusal("package-booked", "Lessons of this package are booked. Cancel them first.");
        if (package.ClosedAt is not null || credits.IsEnded || credits.Left == 0) return new Refusal("package-over", "Nothing of this package is left.");
        package.Close(facts.At);
        var sale = db.LedgerEntries.Local.Single(e => e.PackageId == package.Id && e.Kind == EntryKind.PackageSale);
        var tax = new Money(-sale.SumOn(LedgerAccount.Tax), await book.Currency(stop));
        var text = $"{package.Name}: {credits.Left} of {package.Lessons} lessons given back";
        return book.Add(EntryKind.PackageReturn, facts with { PackageId = package.Id, StudentId = package.StudentId, Text = text }, Movements.Returned(credits.Rest(text, tax, new TaxRate(package.TaxBasisPoints))));
    }
}
