using System.Globalization;
using CoachOffice.Domain;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Ledger;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Settings;

/// <summary>What the practice decided about money.</summary>
[Authorize(Policy = OfficePolicies.Own)]
public sealed class MoneyModel(ReadMoneyTerms read, ChangeMoneyTerms change) : OfficePage
{
    public const string Address = "/settings/money";

    [BindProperty]
    public MoneyFields Input { get; set; } = new();

    public async Task OnGetAsync()
    {
        var terms = await read.Now();
        Input = new MoneyFields
        {
            Version = terms.Version,
            TaxMode = Terms.Of(terms.TaxMode),
            Rounding = Terms.Of(terms.Rounding),
            TaxScope = Terms.Of(terms.TaxScope),
            LegalName = terms.LegalName,
            PostalAddress = terms.PostalAddress,
            TaxNumber = terms.TaxNumber,
            PaymentDays = terms.PaymentDays.ToString(CultureInfo.InvariantCulture),
        };
    }

    public async Task<IActionResult> OnPostAsync()
    {
        if (Details() is not { } details) return BadRequest();
        var saved = await change.To(Input.Version, details, Actor);
        if (saved.Succeeded) return Done(Address, "Saved. It holds for what is written from now on.");
        if (saved.Refusals[0].Code == Clash.Code)
        {
            Input.Version = (await read.Now()).Version;
            ModelState.Remove("Input.Version");
        }

        return Refuse(saved.Refusals);
    }

    private MoneyTermsDetails? Details()
    {
        if (!Terms.TryParse<TaxMode>(Input.TaxMode, out var mode) || !Terms.TryParse<Rounding>(Input.Rounding, out var rounding) || !Terms.TryParse<TaxScope>(Input.TaxScope, out var scope)) return null;
        return new MoneyTermsDetails
        {
            TaxMode = mode,
            Rounding = rounding,
            TaxScope = scope,
            LegalName = (Input.LegalName ?? "").Trim(),
            PostalAddress = Input.PostalAddress ?? "",
            TaxNumber = (Input.TaxNumber ?? "").Trim(),
            PaymentDays = int.TryParse(Input.PaymentDays?.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var days) ? days : -1,
        };
    }
}
