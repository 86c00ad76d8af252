using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Ledger;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Ledger;

/// <summary>A form about one payer: whose, and how the account stands.</summary>
public abstract class PayerFormPage(PayerPage account) : OfficePage
{
    [BindProperty(SupportsGet = true)]
    public Guid Id { get; set; }

    public PayerView Account { get; private set; } = null!;

    protected PayerId Payer => PayerId.From(Id);

    protected string Home => OfficeLinks.To(Payer);

    /// <summary>Null when the account is there; an answer when not.</summary>
    protected async Task<IActionResult?> Look(bool all = false)
    {
        if (Id == Guid.Empty) return NotFound();
        var found = await account.Of(Payer, all, Actor);
        if (!found.TryGet(out var view)) return Refuse(found.Refusals);
        Account = view;
        return null;
    }
}
