using CoachOffice.Data;
using CoachOffice.Data.Access;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Access;

/// <summary>For a person who lost phone and recovery codes: takes their second step off, so that they can set up a new one. Their sessions end.</summary>
public sealed class ResetSecondStep(OfficeDb db, UserManager<Account> users, AuditTrail trail)
{
    /// <summary>The account, or why not. One's own is turned off on one's own page, where the session proves it.</summary>
    public async Task<Outcome<AccountId>> Of(AccountId id, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("reset a second step");
        if (actor.Account == id) return new Refusal("account-own", "Your own second step is changed under your account.");
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var account = await db.Users.SingleOrDefaultAsync(a => a.Id == id.Value, stop);
        if (account is null) return new Refusal("account-not-found", "There is no such account.");
        trail.Add(actor, "second-step-reset", AuditSubject.Of(id));
        var off = await users.SetTwoFactorEnabledAsync(account, false);
        if (!off.Succeeded) return Outcome<AccountId>.Refused([.. off.Errors.Select(AccountRefusals.Of)]);
        await users.ResetAuthenticatorKeyAsync(account);
        await transaction.CommitAsync(stop);
        return id;
    }
}
