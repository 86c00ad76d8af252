using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Rulebook;
using CoachOffice.Web.Features.Rulebook.Editing;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Rulebook;

/// <summary>What the account changed and has not put into force: old beside new, what is wrong with it, and the two ways on.</summary>
[Authorize(OfficePolicies.Teach)]
public sealed class ChangesModel(ReadWork read, PutInForce put, DropChange drop, TakeBackDrop takeBack, TakeNewBase takeBase) : OfficePage
{
    private const string Here = "/rulebook/changes";

    internal WorkView Work { get; private set; } = null!;

    /// <summary>Says what a change does.</summary>
    internal ChangeText Said { get; private set; } = null!;

    /// <summary>Says what is wrong without ids.</summary>
    internal RuleSentence Plain { get; private set; } = null!;

    [BindProperty]
    public string? Why { get; set; }

    public async Task<IActionResult> OnGetAsync() => await Look() ?? Page();

    public async Task<IActionResult> OnPostPutAsync()
    {
        var adopted = await put.By(Why, Actor);
        if (adopted.TryGet(out var edition)) return Done($"/rulebook/history/{edition.Number}", $"Edition {edition.Number} is in force: new drafts are made by it from now on.");
        return await Look() ?? Refuse(adopted.Refusals, "");
    }

    public async Task<IActionResult> OnPostDropAsync(string? kind, string? key)
    {
        EntryId? entry = null;
        if (kind is not null && (!EntryAddress.TryRead(kind, key, out _, out entry) || entry is null)) return NotFound();
        var dropped = await drop.Of(entry, Actor);
        return dropped.Succeeded ? Done(Here, entry is null ? "Dropped." : "Dropped that change.", $"{Here}?handler=takeback") : await Look() ?? Refuse(dropped.Refusals, "");
    }

    public async Task<IActionResult> OnPostTakebackAsync()
    {
        var back = await takeBack.By(Actor);
        return back.Succeeded ? Done(Here, "They are back among your changes.") : await Look() ?? Refuse(back.Refusals, "");
    }

    public async Task<IActionResult> OnPostBaseAsync()
    {
        var based = await takeBase.By(Actor);
        return based.TryGet(out var number) ? Done(Here, $"Your changes stand on edition {number} now. They are still not in force.") : await Look() ?? Refuse(based.Refusals, "");
    }

    private async Task<IActionResult?> Look()
    {
        var seen = await read.Of(Actor);
        if (!seen.TryGet(out var work)) return Refuse(seen.Refusals, "");
        (Work, Plain) = (work, new RuleSentence(work.Book));
        Said = new ChangeText(work.Book, [.. work.Rows.Select(row => row.Edit)]);
        return null;
    }
}
