using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Students;

namespace CoachOffice.UseCases.Ledger;

/// <summary>Makes the payer of a student before there is anything to pay: to sell a package, to take money ahead.</summary>
public sealed class OpenPayer(OfficeDb db, OwnPayer own, AuditTrail trail)
{
    /// <summary>The payer, the same one when asked again.</summary>
    public async Task<Outcome<PayerId>> For(StudentId student, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("open accounts of payers");
        if (await own.Of(student, stop) is not { } payer) return StudentRefusals.NotFound;
        if (!db.ChangeTracker.HasChanges()) return payer;
        trail.Add(actor, "payer-added", AuditSubject.Of(payer));
        return await db.TrySave(stop) == Saved.Yes ? payer : StudentRefusals.Busy;
    }
}
