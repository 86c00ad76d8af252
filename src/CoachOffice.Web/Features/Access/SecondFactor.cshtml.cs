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
public sealed class SecondFactorModel(UserManager<Account> accounts, SecondFactors factors, ReadPractice practice) : OfficePage
{
    [BindProperty]
    public string? Code { get; set; }

    public bool IsOn { get; private set; }

    public bool IsRequired { get; private set; }

    public int CodesLeft { get; private set; }

    public TotpSetUp? SetUp { get; private set; }

    /// <summary>Shown in this one answer and never again.</summary>
    public IReadOnlyList<string> RecoveryCodes { get; private set; } = [];

    public async Task OnGetAsync() => await Look();

    public async Task<IActionResult> OnPostStartAsync()
    {
        SetUp = await factors.Start(await Look());
        return Page();
    }

    public async Task<IActionResult> OnPostConfirmAsync()
    {
        var account = await Look();
        var codes = await factors.Confirm(account, Code);
        if (codes.TryGet(out var fresh)) RecoveryCodes = fresh;
        else SetUp = await factors.Pending(account);
        return codes.Succeeded ? Page() : Refuse(codes.Refusals, "");
    }

    public async Task<IActionResult> OnPostNewCodesAsync()
    {
        RecoveryCodes = await factors.NewCodes(await Look());
        return Page();
    }

    public async Task<IActionResult> OnPostOffAsync()
    {
        var account = await Look();
        if (IsRequired) return Refuse(new Refusal("second-factor-required", "This practice asks everyone for a second step, so it stays on."));
        await factors.TurnOff(account);
        return Done("/account", "The second step is off. Your password alone opens your account now.");
    }

    private async Task<Account> Look()
    {
        var account = await accounts.GetUserAsync(User) ?? throw new InvalidOperationException("A session without an account.");
        IsOn = account.TwoFactorEnabled;
        IsRequired = (await practice.Now())?.RequiresSecondFactor == true;
        CodesLeft = await accounts.CountRecoveryCodesAsync(account);
        return account;
    }
}
