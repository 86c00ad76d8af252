using System.Security.Claims;
using CoachOffice.Data.Access;
using CoachOffice.Domain;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Identity;

namespace CoachOffice.Web.Features.Access;

/// <summary>Turning the second step on and off; each change ends the account's other sessions.</summary>
public sealed class SecondFactors(UserManager<Account> accounts, SignInManager<Account> signIn)
{
    private const int Codes = 10;

    /// <summary>A new key; the second step stays as it was until the first code fits.</summary>
    public async Task<TotpSetUp> Start(Account account)
    {
        await accounts.ResetAuthenticatorKeyAsync(account);
        await Renew(account, secondFactor: account.TwoFactorEnabled);
        return await Pending(account) ?? throw new InvalidOperationException("No key was made.");
    }

    /// <summary>The key that waits for its first code, or null.</summary>
    public async Task<TotpSetUp?> Pending(Account account) =>
        await accounts.GetAuthenticatorKeyAsync(account) is { Length: > 0 } key ? TotpSetUp.For(account, key) : null;

    /// <summary>Turns it on when the code fits, and gives recovery codes.</summary>
    public async Task<Outcome<string[]>> Confirm(Account account, string? code)
    {
        var digits = new string([.. (code ?? "").Where(char.IsAsciiDigit)]);
        if (!await accounts.VerifyTwoFactorTokenAsync(account, accounts.Options.Tokens.AuthenticatorTokenProvider, digits))
            return new Refusal("code-wrong", "That code does not fit. Wait for the next one in the app, and check that the phone's clock is right.", "Code");
        await accounts.SetTwoFactorEnabledAsync(account, true);
        var codes = await NewCodes(account);
        await Renew(account, secondFactor: true);
        return codes;
    }

    /// <summary>Ten new codes; the old ones no longer open anything.</summary>
    public async Task<string[]> NewCodes(Account account) =>
        [.. await accounts.GenerateNewTwoFactorRecoveryCodesAsync(account, Codes) ?? []];

    public async Task TurnOff(Account account)
    {
        await accounts.SetTwoFactorEnabledAsync(account, false);
        await accounts.ResetAuthenticatorKeyAsync(account);
        await Renew(account, secondFactor: false);
    }

    private Task Renew(Account account, bool secondFactor) =>
        signIn.SignInWithClaimsAsync(account, isPersistent: false, [new Claim(OfficeClaims.Method, secondFactor ? OfficeClaims.SecondFactor : "pwd")]);
}
