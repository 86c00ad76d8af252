using CoachOffice.Domain;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Media;
using CoachOffice.UseCases.Media;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Media;

[Authorize(OfficePolicies.Teach)]
[RequestSizeLimit(LargestBody)]
[RequestFormLimits(MultipartBodyLengthLimit = LargestBody)]
public sealed class ClipsModel(ClipsPage page, AddClip add, RemoveMedia remove) : OfficePage
{
    // More than a clip may have by the settings: how much that is, the operation says in words.
    private const int LargestBody = 600_000_000;

    public ClipsView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(Guid id) => await Look(id) ? Page() : NotFound();

    /// <summary>Without script the whole clip comes in one go.</summary>
    public async Task<IActionResult> OnPostAsync(Guid id, IFormFile? file)
    {
        if (file is null || file.Length == 0) return await Again(id, [new Refusal("clip-missing", "Choose a clip first.", "File")]);
        await using var bytes = file.OpenReadStream();
        var added = await add.To(LessonId.From(id), bytes, Actor, HttpContext.RequestAborted);
        return added.Succeeded ? Done($"/lessons/{id}/clips", "The clip is added.") : await Again(id, added.Refusals);
    }

    public async Task<IActionResult> OnPostRemoveAsync(Guid id, Guid clip)
    {
        var removed = await remove.ForGood(MediaId.From(clip), Actor);
        return removed.Succeeded ? Done($"/lessons/{id}/clips", "The clip is removed for good.") : await Again(id, removed.Refusals);
    }

    private async Task<IActionResult> Again(Guid id, IReadOnlyList<Refusal> refusals) => await Look(id) ? Refuse(refusals, "") : NotFound();

    private async Task<bool> Look(Guid id)
    {
        if (await page.Of(LessonId.From(id)) is not { } view) return false;
        View = view;
        return true;
    }
}
