using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Ledger.Packages;

/// <summary>Moves the last day of a package, e.g. after an injury; one that ended is open again, and what was earned by its end is owed in lessons again.</summary>
public sealed class ExtendPackage(OfficeDb db, LedgerBook book, PackageShelf shelf, AuditTrail trail)
{
    /// <summary>The package, or why not.</summary>
    public async Task<Outcome<PackageId>> To(PackageId id, LocalDate lastDay, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepBooks) return NotAllowed.To("move the end of packages");
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var package = await db.Packages.SingleOrDefaultAsync(p => p.Id == id, stop);
        if (package is null) return PackageRefusals.NotFound;
        await book.Hold(package.PayerId, stop);
        var facts = await book.Facts(package.PayerId, actor, stop: stop);
        if (package.ClosedAt is not null || package.ValidUntil is null) return new Refusal("package-over", "This package has no end to be moved.");
        if (lastDay < facts.On || lastDay > facts.On.PlusYears(10)) return new Refusal("package-day", "Give a last day from today on, within ten years.", "LastDay");
        await shelf.CreditsOf(package, stop);
        foreach (var end in db.LedgerEntries.Local.Where(e => e.PackageId == id && e.Kind == EntryKind.PackageEnd).ToList())
        {
            if (db.LedgerEntries.Local.Any(r => r.Reverses == end.Id)) continue;
            await book.TakeBack(end, await book.Facts(package.PayerId, actor, stop: stop) with { Text = $"{package.Name}: last day moved" }, stop);
        }

        package.ExtendTo(lastDay);
        trail.Add(actor, "package-extended", AuditSubject.Of(package.PayerId), $"package:{id.Value:N}");
        if (await db.TrySave(stop) != Saved.Yes) return PackageRefusals.Busy;
        await transaction.CommitAsync(stop);
        return id;
    }
}
