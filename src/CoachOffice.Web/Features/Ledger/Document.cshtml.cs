using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Ledger.Documents;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Ledger;

/// <summary>A receipt or statement, for the printer or the post.</summary>
public sealed class DocumentModel(ReadDocument read, MailDocument mail) : OfficePage
{
    [BindProperty(SupportsGet = true)]
    public Guid Id { get; set; }

    public DocumentView View { get; private set; } = null!;

    public Currency Currency => Currency.Of(View.Document.Content.Currency);

    /// <summary>An amount of the document's own currency.</summary>
    public Money Of(long minor) => new(minor, Currency);

    public async Task<IActionResult> OnGetAsync() => await Look() ?? Page();

    public async Task<IActionResult> OnPostMailAsync()
    {
        if (await Look() is { } answer) return answer;
        var sent = await mail.Send(DocumentId.From(Id), Actor);
        return sent.Succeeded ? Done(OfficeLinks.To(View.Document.Id), "It goes out with the next post, within a minute.") : Refuse(sent.Refusals, "");
    }

    private async Task<IActionResult?> Look()
    {
        if (Id == Guid.Empty) return NotFound();
        var found = await read.Of(DocumentId.From(Id), Actor);
        if (!found.TryGet(out var view)) return Refuse(found.Refusals);
        View = view;
        return null;
    }
}
