using CoachOffice.Domain;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Media;
using CoachOffice.UseCases.Media;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using CoachOffice.Web.Shell.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Media;

[Authorize(OfficePolicies.Teach)]
[RequestSizeLimit(LargestBody)]
public sealed class StillsModel(StillsPage page, AddStill add, RemoveMedia remove) : OfficePage
{
    // More than any still may have by the settings: how much that is, the operation says in words.
    private const int LargestBody = 64 * 1024 * 1024;

    public StillsView View { get; private set; } = null!;

    [BindProperty]
    public string? Shows { get; set; }

    [BindProperty]
    public string? Swing { get; set; } = "1";

    public string Name(MediaItem still) => View.Takes.TryGetValue(still.Id, out var take) && still.Moment is { } moment ? $"{LandmarkWords.Of(take.View, moment)}, swing {take.Swing}" : "Still";

    public async Task<IActionResult> OnGetAsync(Guid id) => await Look(id) ? Page() : NotFound();

    public async Task<IActionResult> OnPostAsync(Guid id, IFormFile? file)
    {
        if (file is null || file.Length == 0) return await Again(id, [new Refusal("still-missing", "Choose a picture first, or paste one.", "File")]);
        if (!LandmarkWords.TryRead(Shows, Swing, out var shows)) return await Again(id, [LandmarkWords.NotSaid]);
        await using var bytes = file.OpenReadStream();
        var added = await add.To(LessonId.From(id), shows, bytes, Actor, HttpContext.RequestAborted);
        return added.TryGet(out var still) ? Done($"/lessons/{id}/stills/{still.Value}", "The still is added: mark its points.") : await Again(id, added.Refusals);
    }

    public async Task<IActionResult> OnPostRemoveAsync(Guid id, Guid still)
    {
        var removed = await remove.ForGood(MediaId.From(still), Actor);
        return removed.Succeeded ? Done($"/lessons/{id}/stills", "The still is removed for good.") : await Again(id, removed.Refusals);
    }

    private async Task<IActionResult> Again(Guid id, IReadOnlyList<Refusal> refusals) => await Look(id) ? Refuse(refusals, "") : NotFound();

    private async Task<bool> Look(Guid id)
    {
        if (await page.Of(LessonId.From(id)) is not { } view) return false;
        View = view;
        return true;
    }
}
