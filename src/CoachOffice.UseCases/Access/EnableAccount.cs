using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Access;

/// <summary>Lets a disabled person sign in again.</summary>
public sealed class EnableAccount(OfficeDb db, AuditTrail trail)
{
    /// <summary>The account, or why not; enabling twice is no fault.</summary>
    public async Task<Outcome<AccountId>> Now(AccountId id, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("enable accounts");
        var account = await db.Users.SingleOrDefaultAsync(a => a.Id == id.Value, stop);
        if (account is null) return new Refusal("account-not-found", "There is no such account.");
        if (account.DisabledAt is null) return id;
        account.DisabledAt = null;
        trail.Add(actor, "account-enabled", AuditSubject.Of(id));
        await db.SaveChangesAsync(stop);
        return id;
    }
}
