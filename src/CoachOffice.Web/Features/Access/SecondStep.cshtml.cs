using CoachOffice.Data.Access;
using CoachOffice.Domain;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.RateLimiting;
using SignInResult = Microsoft.AspNetCore.Identity.SignInResult;

namespace CoachOffice.Web.Features.Access;

[EnableRateLimiting(RateLimits.SignIn)]
public sealed class SecondStepModel(SignInManager<Account> signIn, UsedCodes used) : OfficePage
{
    private static readonly Refusal Wrong = new(
        "code-wrong",
        "That code does not fit, or was used before. Wait for the next one in your app, check that the phone's clock is right, or use a recovery code.",
        "Code");

    [BindProperty]
    public string? Code { get; set; }

    [BindProperty(SupportsGet = true)]
    public string? Next { get; set; }

    public async Task<IActionResult> OnGetAsync() =>
        await signIn.GetTwoFactorAuthenticationUserAsync() is null ? RedirectToPage("SignIn") : Page();

    public async Task<IActionResult> OnPostAsync()
    {
        var account = await signIn.GetTwoFactorAuthenticationUserAsync();
        if (account is null) return RedirectToPage("SignIn");
        var code = new string([.. (Code ?? "").Where(c => !char.IsWhiteSpace(c))]);
        var result = await Try(account, code);
        return result.Succeeded ? LocalRedirect(Onward(Next)) : Refuse([Wrong], "");
    }

    private async Task<SignInResult> Try(Account account, string code)
    {
        if (code.Length == 0) return SignInResult.Failed;
        if (code.Length != TotpSetUp.Digits || !code.All(char.IsAsciiDigit)) return await signIn.TwoFactorRecoveryCodeSignInAsync(code.ToUpperInvariant());
        return await used.Use(account.AccountId, code) ? await signIn.TwoFactorAuthenticatorSignInAsync(code, isPersistent: false, rememberClient: false) : SignInResult.Failed;
    }
}
