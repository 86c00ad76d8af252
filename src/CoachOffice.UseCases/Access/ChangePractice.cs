using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Access;

/// <summary>Saves what an owner entered about the practice.</summary>
public sealed class ChangePractice(OfficeDb db, AuditTrail trail, Clash clash, KeptPractice kept)
{
    /// <summary>The new version, or why not; a clash says who saved meanwhile and shows both values.</summary>
    public async Task<Outcome<int>> To(int version, PracticeDetails details, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(details);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("change the practice");
        var wrong = details.Check();
        if (wrong.Count > 0) return Outcome<int>.Refused(wrong);
        var practice = await db.Practices.SingleAsync(stop);
        if (practice.Version != version) return await Clashed(practice, details, stop);
        if (practice.Currency != details.Currency && await HasPrices(stop))
            return new Refusal("practice-currency-kept", $"Prices and books are kept in {practice.Currency}; the currency stays what it is.", nameof(details.Currency));
        practice.Change(details);
        trail.Add(actor, "practice-changed", AuditSubject.Practice(practice.Id));
        var saved = await db.TrySave(stop);
        kept.Forget();
        if (saved == Saved.Yes) return practice.Version;
        db.ChangeTracker.Clear();
        return await Clashed(await db.Practices.SingleAsync(stop), details, stop);
    }

    // Amounts are whole numbers of the smallest unit: another currency would make other money of them.
    private async Task<bool> HasPrices(CancellationToken stop) =>
        await db.LedgerEntries.AnyAsync(stop) || await db.Offerings.AnyAsync(stop) || await db.PackageOffers.AnyAsync(stop);

    private async Task<Outcome<int>> Clashed(Practice kept, PracticeDetails yours, CancellationToken stop)
    {
        Difference[] all =
        [
            new(nameof(yours.Name), "Name", kept.Name, yours.Name),
            new(nameof(yours.Zone), "Time zone", kept.Zone, yours.Zone),
            new(nameof(yours.Currency), "Currency", kept.Currency, yours.Currency),
            new(nameof(yours.Units), "Units", Terms.Of(kept.Units), Terms.Of(yours.Units)),
            new(nameof(yours.EmergencyNumber), "Emergency number", kept.EmergencyNumber, yours.EmergencyNumber),
            new(nameof(yours.RequiresSecondFactor), "Second factor for everyone", Word(kept.RequiresSecondFactor), Word(yours.RequiresSecondFactor)),
            new(nameof(yours.MailFrom), "Sender of mail", kept.MailFrom, yours.MailFrom),
            new(nameof(yours.PublicAddress), "Address of these pages", kept.PublicAddress, yours.PublicAddress),
        ];
        return Outcome<int>.Refused(await clash.Over(AuditSubject.Practice(kept.Id), "the practice", all, stop));
    }

    private static string Word(bool wanted) => wanted ? "yes" : "no";
}
