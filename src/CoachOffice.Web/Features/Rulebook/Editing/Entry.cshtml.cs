using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Rulebook;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>The editor of one entry of the rulebook: as a form where there is one, and as text. What is kept waits in the account's changes.</summary>
[Authorize(OfficePolicies.Teach)]
public sealed class EntryModel(OpenEntry open, KeepChange keep, CheckEntry check) : OfficePage
{
    internal EntryScreen Screen { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(string kind, string? key, [FromQuery(Name = "as")] string? view, [FromQuery(Name = "for")] string? forWhat)
    {
        if (!EntryAddress.TryRead(kind, key, out var entryKind, out var id)) return NotFound();
        if (!(await open.Of(id, Actor)).TryGet(out var desk)) return NotFound();
        Screen = EntryScreens.Opened(entryKind, desk, view == "text", forWhat);
        return Page();
    }

    public async Task<IActionResult> OnPostAsync(string kind, string? key)
    {
        if (await Sent(kind, key) is not { } post) return NotFound();
        if (post.Wish is null) return Shown(post, null);
        if (post.Wish == "check") return Shown(post, await Found(post));
        if (post.Id is not { } id) return Refused(post, [new("entry-nameless", "Give it a name, so that others can refer to it.")]);
        var form = new WorkForm(post.Edition, [post.Edit(id)]) { IsNew = post.Desk.Id is null, Unfinished = post.Wish == "unfinished" };
        var kept = await keep.Of(form, Actor);
        if (!kept.TryGet(out var change)) return Refused(post, kept.Refusals);
        if (!change.IsKept) return Faulty(post, change.Check);
        return Done("/rulebook/changes", change.IsNews ? "Kept with your changes. It is not in force yet." : "That is what the rulebook says already; there is nothing to keep.");
    }

    /// <summary>What is wrong with what stands in the form now; keeps nothing.</summary>
    public async Task<IActionResult> OnPostCheckAsync(string kind, string? key)
    {
        if (await Sent(kind, key) is not { } post) return NotFound();
        Screen = EntryScreens.Sent(post, await Found(post));
        return Partial("_Found", Screen);
    }

    private async Task<WorkCheck?> Found(EntryPost post) => post.Id is { } id && (await check.Of(post.Edit(id), Actor)).TryGet(out var found) ? found : null;

    private async Task<EntryPost?> Sent(string kind, string? key)
    {
        if (!EntryAddress.TryRead(kind, key, out var entryKind, out var id)) return null;
        return (await open.Of(id, Actor)).TryGet(out var desk) ? new EntryPost(Request.Form, entryKind, desk) : null;
    }

    private IActionResult Refused(EntryPost post, IReadOnlyList<Domain.Refusal> refusals)
    {
        Screen = EntryScreens.Sent(post, null);
        return Refuse(refusals, "");
    }

    private PageResult Faulty(EntryPost post, WorkCheck found)
    {
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Shown(post, found, refused: true);
    }

    private PageResult Shown(EntryPost post, WorkCheck? found, bool refused = false)
    {
        Screen = EntryScreens.Sent(post, found) with { WasRefused = refused };
        return Page();
    }
}
