using CoachOffice.Data.Access;
using CoachOffice.Domain;
using CoachOffice.UseCases.Access;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.RateLimiting;

namespace CoachOffice.Web.Features.Access;

[EnableRateLimiting(RateLimits.SignIn)]
public sealed class SignInModel(SignInManager<Account> signIn, ReadPractice practice, PasswordGuard guard) : OfficePage
{
    /// <summary>One sentence for every failure, so that it tells nobody which addresses have an account.</summary>
    private static readonly Refusal Wrong = new(
        "sign-in-wrong",
        "Mail address and password do not fit together, or the account is closed or rests after too many wrong tries. Check both and try again.");

    [BindProperty]
    public SignInForm Input { get; set; } = new();

    [BindProperty(SupportsGet = true)]
    public string? Next { get; set; }

    public async Task<IActionResult> OnGetAsync()
    {
        if (await practice.Now() is null) return RedirectToPage("FirstRun");
        return User.Identity?.IsAuthenticated == true ? LocalRedirect("/") : Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        var account = await guard.Find(Input.Email, Input.Password);
        if (account is null) return Refuse(Wrong);
        var result = await signIn.PasswordSignInAsync(account, Input.Password!, isPersistent: false, lockoutOnFailure: true);
        if (result.RequiresTwoFactor) return RedirectToPage("SecondStep", new { next = Next });
        return result.Succeeded ? LocalRedirect(Onward(Next)) : Refuse(Wrong);
    }
}
