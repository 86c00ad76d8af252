using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;

namespace CoachOffice.UseCases.Access;

/// <summary>An owner lets another person in.</summary>
public sealed class AddAccount(OfficeDb db, Accounts accounts, AuditTrail trail)
{
    /// <summary>The new account, or everything that is wrong with the form.</summary>
    public async Task<Outcome<AccountId>> For(NewAccountForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("add accounts");
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var made = await accounts.Make(form);
        if (!made.TryGet(out var account)) return Outcome<AccountId>.Refused(made.Refusals);
        trail.Add(actor, "account-added", AuditSubject.Of(account.AccountId), Terms.Of(account.Policy));
        await db.SaveChangesAsync(stop);
        await transaction.CommitAsync(stop);
        return account.AccountId;
    }
}
