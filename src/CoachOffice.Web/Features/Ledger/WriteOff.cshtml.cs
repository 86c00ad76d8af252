using CoachOffice.Domain;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Ledger;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Ledger;

/// <summary>Gives up what is owed.</summary>
[Authorize(Policy = OfficePolicies.Own)]
public sealed class WriteOffModel(PayerPage account, WriteOffDebt writeOff, INewIds ids) : PayerFormPage(account)
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
        if (Input.Id == Guid.Empty) return BadRequest();
        var given = await writeOff.From(new WriteOffForm { Id = EntryId.From(Input.Id), PayerId = Payer, Amount = Input.Amount ?? "", Reason = (Input.Text ?? "").Trim() }, Actor);
        return given.Succeeded ? Done(Home, "Written off. It can be reversed beside the entry.") : Refuse([.. given.Refusals.Select(r => r.Field == "Reason" ? r with { Field = "Text" } : r)]);
    }
}
