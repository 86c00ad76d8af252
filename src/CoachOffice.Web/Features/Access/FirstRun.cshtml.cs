using CoachOffice.Data.Access;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.RateLimiting;

namespace CoachOffice.Web.Features.Access;

/// <summary>Only there until the practice is open; then it leads to the sign-in.</summary>
[EnableRateLimiting(RateLimits.SignIn)]
public sealed class FirstRunModel(OpenPractice open, DemoOpening demo, ReadPractice practice, SignInManager<Account> signIn) : OfficePage
{
    [BindProperty]
    public FirstRunFields Input { get; set; } = new();

    public async Task<IActionResult> OnGetAsync() => await practice.Now() is null ? Page() : RedirectToPage("SignIn");

    public async Task<IActionResult> OnPostAsync()
    {
        if (await practice.Now() is not null) return RedirectToPage("SignIn");
        var form = Form();
        if (form.IsDemo) return await demo.Begin(form) is { } refused ? Refuse([.. refused.Select(OnThisForm)]) : RedirectToPage("DemoProgress");
        var opened = await open.For(form);
        if (!opened.TryGet(out var owner)) return Refuse([.. opened.Refusals.Select(OnThisForm)]);
        var account = await signIn.UserManager.FindByIdAsync(owner.Value.ToString());
        await signIn.SignInAsync(account!, isPersistent: false);
        TempData.Leave(new Notice("The practice is open. One more thing before you begin:"));
        return LocalRedirect(SecondFactorGate.SetUpPath);
    }

    private FirstRunForm Form() => new()
    {
        OwnerName = Input.OwnerName ?? "",
        OwnerEmail = Input.Email ?? "",
        Password = Input.Password ?? "",
        IsDemo = Input.Start == "demo",
        Practice = new PracticeDetails
        {
            Name = Input.PracticeName ?? "",
            Zone = (Input.Zone ?? "").Trim(),
            Currency = (Input.Currency ?? "").Trim().ToUpperInvariant(),
            // Links in mails lead to where the owner opened it; the settings change it.
            PublicAddress = $"{Request.Scheme}://{Request.Host}",
            Units = Terms.TryParse<UnitSystem>(Input.Units, out var units) ? units : UnitSystem.Metric,
        },
    };

    /// <summary>The practice's and the account's own field names meet in one form.</summary>
    private static Refusal OnThisForm(Refusal refusal) => refusal.Field switch
    {
        nameof(PracticeDetails.Name) => refusal with { Field = nameof(FirstRunFields.PracticeName) },
        nameof(NewAccountForm.DisplayName) => refusal with { Field = nameof(FirstRunFields.OwnerName) },
        _ => refusal,
    };
}
