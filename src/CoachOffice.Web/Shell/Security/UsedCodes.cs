using System.Globalization;
using CoachOffice.Data;
using CoachOffice.Domain.Access;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.Web.Shell.Security;

/// <summary>A code from an authenticator app opens once, on whichever node: who looks over a shoulder gets nothing from it. Identity takes a code for some minutes around its time, so we remember it longer.</summary>
public sealed class UsedCodes(OfficeDb db, IClock clock)
{
    private const string Provider = "CoachOffice";
    private const string Name = "used-code-";
    private static readonly Duration Longer = Duration.FromMinutes(10);

    /// <summary>Notes the code before it is tried; false when it was noted already. Two at once: the table's key lets one through.</summary>
    public async Task<bool> Use(AccountId account, string code)
    {
        await Forget(account);
        db.UserTokens.Add(new IdentityUserToken<Guid> { UserId = account.Value, LoginProvider = Provider, Name = Name + code, Value = Written(clock.GetCurrentInstant()) });
        if (await db.TrySave(CancellationToken.None) == Saved.Yes) return true;
        db.ChangeTracker.Clear();
        return false;
    }

    private async Task Forget(AccountId account)
    {
        var noted = await db.UserTokens.AsNoTracking().Where(t => t.UserId == account.Value && t.LoginProvider == Provider && t.Name.StartsWith(Name)).ToListAsync();
        var before = Written(clock.GetCurrentInstant() - Longer);
        var old = noted.Where(t => string.CompareOrdinal(t.Value, before) < 0).Select(t => t.Name).ToList();
        if (old.Count > 0) await db.UserTokens.Where(t => t.UserId == account.Value && t.LoginProvider == Provider && old.Contains(t.Name)).ExecuteDeleteAsync();
    }

    private static string Written(Instant at) => at.ToUnixTimeSeconds().ToString("D12", CultureInfo.InvariantCulture);
}
