using CoachOffice.Domain;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Ledger;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Ledger;

/// <summary>Money that came.</summary>
public sealed class PayModel(PayerPage account, TakePayment take, INewIds ids) : PayerFormPage(account)
{
    [BindProperty]
    public PaymentFields Input { get; set; } = new();

    public async Task<IActionResult> OnGetAsync()
    {
        if (await Look() is { } answer) return answer;
        Input = new PaymentFields { Id = ids.Next(), Amount = Account.Balance.MinorUnits > 0 ? Account.Balance.Amount : "" };
        return Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        if (await Look() is { } answer) return answer;
        if (Input.Id == Guid.Empty || !Terms.TryParse<PaymentMethod>(Input.Method, out var method)) return BadRequest();
        var form = new PaymentForm { Id = EntryId.From(Input.Id), PayerId = Payer, Amount = Input.Amount ?? "", Method = method, Reference = (Input.Reference ?? "").Trim(), Text = (Input.Text ?? "").Trim() };
        var taken = await take.From(form, Actor);
        return taken.Succeeded ? Done(Home, "The payment is noted. A receipt can be written beside it.") : Refuse(taken.Refusals);
    }
}
