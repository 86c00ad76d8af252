using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Ledger;

/// <summary>Saves what an owner decided about money. What is written already stays as it is.</summary>
public sealed class ChangeMoneyTerms(OfficeDb db, AuditTrail trail, Clash clash, INewIds ids)
{
    /// <summary>The new version, or why not; a clash says who saved meanwhile and shows both values.</summary>
    public async Task<Outcome<int>> To(int version, MoneyTermsDetails details, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(details);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("change the terms of money");
        var wrong = details.Check();
        if (wrong.Count > 0) return Outcome<int>.Refused(wrong);
        var terms = await db.MoneyTerms.SingleOrDefaultAsync(stop);
        if (terms is null) db.MoneyTerms.Add(terms = MoneyTerms.Usual(ids.Next()));
        if (terms.Version != version) return await Clashed(terms, details, stop);
        terms.Change(details);
        trail.Add(actor, "money-terms-changed", AuditSubject.MoneyTerms(terms.Id));
        if (await db.TrySave(stop) == Saved.Yes) return terms.Version;
        db.ChangeTracker.Clear();
        return await Clashed(await db.MoneyTerms.SingleAsync(stop), details, stop);
    }

    private async Task<Outcome<int>> Clashed(MoneyTerms kept, MoneyTermsDetails yours, CancellationToken stop)
    {
        Difference[] all =
        [
            new(nameof(yours.TaxMode), "Prices", Terms.Of(kept.TaxMode), Terms.Of(yours.TaxMode)),
            new(nameof(yours.Rounding), "Rounding", Terms.Of(kept.Rounding), Terms.Of(yours.Rounding)),
            new(nameof(yours.TaxScope), "Tax is rounded", Terms.Of(kept.TaxScope), Terms.Of(yours.TaxScope)),
            new(nameof(yours.LegalName), "Name", kept.LegalName, yours.LegalName),
            new(nameof(yours.PostalAddress), "Address", kept.PostalAddress, yours.PostalAddress.Trim().ReplaceLineEndings("\n")),
            new(nameof(yours.TaxNumber), "Tax number", kept.TaxNumber, yours.TaxNumber),
            new(nameof(yours.PaymentDays), "Days to pay", $"{kept.PaymentDays}", $"{yours.PaymentDays}"),
        ];
        return Outcome<int>.Refused(await clash.Over(AuditSubject.MoneyTerms(kept.Id), "the terms of money", all, stop));
    }
}
