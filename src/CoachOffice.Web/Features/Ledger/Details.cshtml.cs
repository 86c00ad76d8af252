using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Ledger;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Ledger;

/// <summary>Name, mail and address of a payer.</summary>
public sealed class DetailsModel(PayerPage account, ChangePayer change) : PayerFormPage(account)
{
    [BindProperty]
    public DetailFields Input { get; set; } = new();

    public async Task<IActionResult> OnGetAsync()
    {
        if (await Look() is { } answer) return answer;
        var payer = Account.Payer;
        Input = new DetailFields { Version = payer.Version, Name = payer.Name, Email = payer.Email, PostalAddress = payer.PostalAddress };
        return Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        if (await Look() is { } answer) return answer;
        var details = new PayerDetails { Name = (Input.Name ?? "").Trim(), Email = (Input.Email ?? "").Trim(), PostalAddress = Input.PostalAddress ?? "" };
        var saved = await change.To(Payer, Input.Version, details, Actor);
        if (saved.Succeeded) return Done(Home, "Saved.");
        if (saved.Refusals[0].Code == Clash.Code)
        {
            Input.Version = Account.Payer.Version;
            ModelState.Remove("Input.Version");
        }

        return Refuse(saved.Refusals);
    }
}
