using CoachOffice.Domain;
using CoachOffice.Drafting.Replay;
using CoachOffice.UseCases.Rulebook;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Rulebook;

/// <summary>Which past drafts the account's changes would make otherwise: begun, watched and stopped here.</summary>
[Authorize(OfficePolicies.Teach)]
public sealed class WouldChangeModel(CompareMyChanges begin, WhatWouldChange watch, StopWhatWouldChange stop, RulebookPages pages) : OfficePage
{
    private const string Here = "/rulebook/changes/what-would-change";
    private const int RowsAPage = 20;

    /// <summary>Null before anything was begun.</summary>
    internal ReplayView? View { get; private set; }

    internal Domain.Plans.Rulebook Book { get; private set; } = null!;

    [BindProperty(SupportsGet = true, Name = "page-of-list")]
    public int? Part { get; set; }

    internal int PageNow => Math.Clamp(Part ?? 1, 1, Pages);

    internal int Pages => Math.Max(1, ((View?.Rows.Count ?? 0) + RowsAPage - 1) / RowsAPage);

    /// <summary>Those whose work differs come first; a line more among what is parked can wait.</summary>
    internal IEnumerable<ReplayRow> Rows => View!.Rows.OrderByDescending(r => r.Difference.Sections.Contains(DraftSection.Focus)).ThenByDescending(r => r.Difference.Sections.Contains(DraftSection.Stages)).Skip((PageNow - 1) * RowsAPage).Take(RowsAPage);

    internal bool IsRunning => View?.State is ReplayState.Searching or ReplayState.Comparing;

    public async Task<IActionResult> OnGetAsync()
    {
        await Look();
        // Without script the page looks again by itself while something is under way.
        if (IsRunning) Response.Headers["Refresh"] = "3";
        return Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        var begun = await begin.By(Actor);
        return begun.Succeeded ? LocalRedirect(Here) : await Again(begun.Refusals);
    }

    public async Task<IActionResult> OnPostStopAsync()
    {
        var stopped = await stop.For(Actor);
        return stopped.Succeeded ? LocalRedirect(Here) : await Again(stopped.Refusals);
    }

    private async Task<IActionResult> Again(IReadOnlyList<Refusal> refusals)
    {
        await Look();
        return Refuse(refusals, "");
    }

    private async Task Look()
    {
        View = (await watch.For(Actor)).TryGet(out var view) ? view : null;
        Book = (await pages.Of(null, Actor)).Value.Book;
    }
}
