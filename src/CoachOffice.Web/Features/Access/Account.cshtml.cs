using CoachOffice.Data.Access;
using CoachOffice.Domain;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.RateLimiting;

namespace CoachOffice.Web.Features.Access;

[EnableRateLimiting(RateLimits.SignIn)]
public sealed class AccountModel(UserManager<Account> accounts, SignInManager<Account> signIn, ChooseMorningList morning) : OfficePage
{
    [BindProperty]
    public PasswordForm Input { get; set; } = new();

    /// <summary>The signed-in person's own account.</summary>
    public Account Own { get; private set; } = new();

    internal bool MayTeach => Actor.MayTeach;

    public Task OnGetAsync() => Look();

    public async Task<IActionResult> OnPostMorningAsync(bool wants)
    {
        await Look();
        var chosen = await morning.Set(wants, Actor);
        return chosen.Succeeded ? Done("/account", wants ? "A list comes each morning that has something for you." : "No list comes any more.") : Refuse(chosen.Refusals);
    }

    public async Task<IActionResult> OnPostPasswordAsync()
    {
        await Look();
        var result = await accounts.ChangePasswordAsync(Own, Input.Current ?? "", Input.New ?? "");
        if (!result.Succeeded) return Refuse([.. result.Errors.Select(Refused)]);
        await signIn.RefreshSignInAsync(Own);
        return Done("/account", "Your password is changed, and your other sessions end.");
    }

    public async Task<IActionResult> OnPostEverywhereAsync()
    {
        await Look();
        await accounts.UpdateSecurityStampAsync(Own);
        await signIn.SignOutAsync();
        return RedirectToPage("SignedOut");
    }

    private static Refusal Refused(IdentityError error)
    {
        if (error.Code == nameof(IdentityErrorDescriber.PasswordMismatch)) return new Refusal("password-wrong", "That is not the password you have now.", nameof(PasswordForm.Current));
        var refusal = AccountRefusals.Of(error);
        return refusal.Field == "Password" ? refusal with { Field = nameof(PasswordForm.New) } : refusal;
    }

    private async Task Look() =>
        Own = await accounts.GetUserAsync(User) ?? throw new InvalidOperationException("A session without an account.");
}
