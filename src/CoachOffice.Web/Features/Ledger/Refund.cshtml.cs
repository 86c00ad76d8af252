using CoachOffice.Domain;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Ledger;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Ledger;

/// <summary>Money that goes back.</summary>
[Authorize(Policy = OfficePolicies.Own)]
public sealed class RefundModel(PayerPage account, RefundMoney refund, INewIds ids) : PayerFormPage(account)
{
    [BindProperty]
    public PaymentFields Input { get; set; } = new();

    public async Task<IActionResult> OnGetAsync()
    {
        if (await Look() is { } answer) return answer;
        Input = new PaymentFields { Id = ids.Next(), Amount = Account.Balance.MinorUnits < 0 ? (-Account.Balance).Amount : "" };
        return Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        if (await Look() is { } answer) return answer;
        if (Input.Id == Guid.Empty || !Terms.TryParse<PaymentMethod>(Input.Method, out var method)) return BadRequest();
        var form = new PaymentForm { Id = EntryId.From(Input.Id), PayerId = Payer, Amount = Input.Amount ?? "", Method = method, Reference = (Input.Reference ?? "").Trim(), Text = (Input.Text ?? "").Trim() };
        var given = await refund.From(form, Actor);
        return given.Succeeded ? Done(Home, "The refund is noted.") : Refuse(given.Refusals);
    }
}
