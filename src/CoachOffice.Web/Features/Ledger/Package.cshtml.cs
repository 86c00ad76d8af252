using CoachOffice.Domain;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Ledger.Packages;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Ledger;

/// <summary>A package somebody bought: its last day is moved, or its lessons are given back.</summary>
[Authorize(Policy = OfficePolicies.Own)]
public sealed class PackageModel(ReadPackage read, ExtendPackage extend, ReturnPackage giveBack, INewIds ids) : OfficePage
{
    [BindProperty(SupportsGet = true)]
    public Guid Id { get; set; }

    /// <summary>Made when the form was shown: sent twice the lessons are given back once.</summary>
    [BindProperty]
    public Guid Entry { get; set; }

    [BindProperty]
    public string? LastDay { get; set; }

    public PackageRow Row { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync()
    {
        Entry = ids.Next();
        if (await Look() is { } answer) return answer;
        LastDay = Row.Package.ValidUntil is { } last ? DayEntry.Text(last) : null;
        return Page();
    }

    public async Task<IActionResult> OnPostExtendAsync()
    {
        if (await Look() is { } answer) return answer;
        if (DayEntry.Read(LastDay) is not { } last) return Refuse([DayEntry.Refusal(nameof(LastDay))], "");
        var moved = await extend.To(PackageId.From(Id), last, Actor);
        return moved.Succeeded ? Done(OfficeLinks.To(Row.Package.PayerId), "The last day is moved.") : Refuse(moved.Refusals, "");
    }

    public async Task<IActionResult> OnPostReturnAsync()
    {
        if (await Look() is { } answer) return answer;
        if (Entry == Guid.Empty) return BadRequest();
        var given = await giveBack.From(new ReturnForm(EntryId.From(Entry), PackageId.From(Id)), Actor);
        return given.Succeeded ? Done(OfficeLinks.To(Row.Package.PayerId), "The lessons are given back; their worth stands on account.") : Refuse(given.Refusals, "");
    }

    private async Task<IActionResult?> Look()
    {
        if (Id == Guid.Empty) return NotFound();
        var found = await read.Of(PackageId.From(Id), Actor);
        if (!found.TryGet(out var row)) return Refuse(found.Refusals);
        Row = row;
        return null;
    }
}
