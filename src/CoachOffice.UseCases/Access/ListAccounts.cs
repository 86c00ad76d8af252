using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Access;

/// <summary>Who may sign in.</summary>
public sealed class ListAccounts(OfficeDb db)
{
    /// <summary>All accounts by name, disabled ones last.</summary>
    public async Task<Outcome<IReadOnlyList<AccountRow>>> Now(Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("see the accounts");
        var accounts = await db.Users.AsNoTracking().ToListAsync(stop);
        return accounts.OrderBy(a => a.DisabledAt is not null).ThenBy(a => a.DisplayName, StringComparer.Ordinal).Select(a => new AccountRow
        {
            Id = a.AccountId,
            DisplayName = a.DisplayName,
            Email = a.Email ?? "",
            Policy = a.Policy,
            HasSecondFactor = a.TwoFactorEnabled,
            AddedAt = a.AddedAt,
            DisabledAt = a.DisabledAt,
        }).ToArray();
    }
}
