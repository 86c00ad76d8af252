using CoachOffice.Domain;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Ledger;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Ledger;

/// <summary>Takes a wrong entry back.</summary>
[Authorize(Policy = OfficePolicies.Own)]
public sealed class ReverseModel(ReadEntry read, ReverseEntry reverse, INewIds ids) : OfficePage
{
    [BindProperty(SupportsGet = true)]
    public Guid Id { get; set; }

    /// <summary>Made when the form was shown: sent twice it is one reversal.</summary>
    [BindProperty]
    public Guid Entry { get; set; }

    [BindProperty]
    public string? Reason { get; set; }

    public EntryView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync()
    {
        Entry = ids.Next();
        return await Look() ?? Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        if (await Look() is { } answer) return answer;
        if (Entry == Guid.Empty) return BadRequest();
        var reversed = await reverse.From(new Reversing(EntryId.From(Entry), EntryId.From(Id), (Reason ?? "").Trim()), Actor);
        return reversed.Succeeded ? Done(OfficeLinks.To(View.Entry.PayerId), "The entry is reversed. Both stay in the books.") : Refuse(reversed.Refusals, "");
    }

    private async Task<IActionResult?> Look()
    {
        if (Id == Guid.Empty) return NotFound();
        var found = await read.Of(EntryId.From(Id), Actor);
        if (!found.TryGet(out var view)) return Refuse(found.Refusals);
        View = view;
        return null;
    }
}
