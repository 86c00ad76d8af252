using CoachOffice.Data.Access;
using Microsoft.AspNetCore.Identity;

namespace CoachOffice.Web.Features.Access;

/// <summary>Finds an account by mail address and takes as long for an unknown one, so that time tells nothing either.</summary>
public sealed class PasswordGuard(UserManager<Account> accounts)
{
    private const int LongestPassword = 200;
    private static readonly Account Nobody = new();
    private static readonly Lazy<string> Decoy = new(() => new PasswordHasher<Account>().HashPassword(Nobody, "nobody has this password"));

    public async Task<Account?> Find(string? email, string? password)
    {
        if (string.IsNullOrWhiteSpace(email) || string.IsNullOrEmpty(password) || password.Length > LongestPassword) return null;
        var account = await accounts.FindByEmailAsync(email.Trim());
        if (account is null) accounts.PasswordHasher.VerifyHashedPassword(Nobody, Decoy.Value, password);
        return account;
    }
}
