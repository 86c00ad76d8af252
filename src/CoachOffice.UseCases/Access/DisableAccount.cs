using CoachOffice.Data;
using CoachOffice.Data.Access;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Access;

/// <summary>Ends a person's access: they cannot sign in again and open sessions end at their next check.</summary>
public sealed class DisableAccount(OfficeDb db, UserManager<Account> users, AuditTrail trail, IClock clock)
{
    /// <summary>The disabled account, or why not. Nobody disables themselves, so an owner is always left.</summary>
    public async Task<Outcome<AccountId>> Now(AccountId id, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("disable accounts");
        if (actor.Account == id) return new Refusal("account-own", "You cannot disable your own account; another owner can.");
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var account = await db.Users.SingleOrDefaultAsync(a => a.Id == id.Value, stop);
        if (account is null) return new Refusal("account-not-found", "There is no such account.");
        account.DisabledAt ??= clock.GetCurrentInstant();
        trail.Add(actor, "account-disabled", AuditSubject.Of(id));
        var stamped = await users.UpdateSecurityStampAsync(account);
        if (!stamped.Succeeded) return Outcome<AccountId>.Refused([.. stamped.Errors.Select(AccountRefusals.Of)]);
        await transaction.CommitAsync(stop);
        return id;
    }
}
