using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Media;
using CoachOffice.UseCases.Media;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Media;

/// <summary>Plays a clip.</summary>
[Authorize(OfficePolicies.Teach)]
public sealed class ClipModel(ClipsPage page) : OfficePage
{
    public ClipsView View { get; private set; } = null!;

    public MediaItem Clip { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(Guid id, Guid clip)
    {
        if (await page.Of(LessonId.From(id)) is not { Permission: MediaPermission.Given } view || view.Clips.FirstOrDefault(c => c.Id.Value == clip) is not { } found) return NotFound();
        (View, Clip) = (view, found);
        return Page();
    }
}
