using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Ledger;
using CoachOffice.UseCases.Ledger.Documents;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Ledger;

/// <summary>One payer's account: what is owed, packages, entries, receipts.</summary>
public sealed class PayerModel(PayerPage account, IssueReceipt receipts) : PayerFormPage(account)
{
    public bool MayKeepBooks => Actor.MayKeepBooks;

    public bool MayChange => Account.Payer.ErasedAt is null;

    public async Task<IActionResult> OnGetAsync(bool all = false) => await Look(all) ?? Page();

    /// <summary>The receipt of a payment, written now or before.</summary>
    public async Task<IActionResult> OnPostReceiptAsync(Guid entry)
    {
        var written = await receipts.For(EntryId.From(entry), Actor);
        if (written.TryGet(out var id)) return LocalRedirect(OfficeLinks.To(id));
        return await Look() ?? Refuse(written.Refusals, "");
    }
}
