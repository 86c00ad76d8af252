using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Ledger;

/// <summary>Saves what a person entered about a payer. Receipts written before keep the name and address they were written with.</summary>
public sealed class ChangePayer(OfficeDb db, AuditTrail trail, Clash clash)
{
    /// <summary>The new version, or why not; a clash says who saved meanwhile and shows both values.</summary>
    public async Task<Outcome<int>> To(PayerId id, int version, PayerDetails details, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(details);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("change payers");
        var wrong = details.Check();
        if (wrong.Count > 0) return Outcome<int>.Refused(wrong);
        var payer = await db.Payers.SingleOrDefaultAsync(p => p.Id == id && p.ErasedAt == null, stop);
        if (payer is null) return PayerRefusals.NotFound;
        if (payer.Version != version) return await Clashed(payer, details, stop);
        payer.Change(details);
        trail.Add(actor, "payer-changed", AuditSubject.Of(id));
        if (await db.TrySave(stop) == Saved.Yes) return payer.Version;
        db.ChangeTracker.Clear();
        return await Clashed(await db.Payers.SingleAsync(p => p.Id == id, stop), details, stop);
    }

    private async Task<Outcome<int>> Clashed(Payer kept, PayerDetails yours, CancellationToken stop)
    {
        Difference[] all =
        [
            new(nameof(yours.Name), "Name", kept.Name, yours.Name),
            new(nameof(yours.Email), "Mail", kept.Email, yours.Email),
            new(nameof(yours.PostalAddress), "Address", kept.PostalAddress, yours.PostalAddress.Trim().ReplaceLineEndings("\n")),
        ];
        return Outcome<int>.Refused(await clash.Over(AuditSubject.Of(kept.Id), "this payer", all, stop));
    }
}
