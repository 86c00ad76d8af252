using System.Globalization;
using CoachOffice.Domain;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Media;
using CoachOffice.UseCases.Media;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Media;

/// <summary>Plays a clip, and says which take it shows.</summary>
[Authorize(OfficePolicies.Teach)]
public sealed class ClipModel(ClipsPage page, SayWhatClipShows say) : OfficePage
{
    public ClipsView View { get; private set; } = null!;

    public MediaItem Clip { get; private set; } = null!;

    /// <summary>From where it was filmed, as posted.</summary>
    [BindProperty]
    public string? Seen { get; set; }

    /// <summary>Which swing, as typed.</summary>
    [BindProperty]
    public string? Swing { get; set; }

    public async Task<IActionResult> OnGetAsync(Guid id, Guid clip)
    {
        if (!await Load(id, clip)) return NotFound();
        (Seen, Swing) = View.TakeOf(Clip) is { } take ? (Terms.Of(take.View), take.Swing.ToString(CultureInfo.InvariantCulture)) : (Terms.Of(Domain.Measuring.View.FaceOn), "1");
        return Page();
    }

    public async Task<IActionResult> OnPostAsync(Guid id, Guid clip)
    {
        if (!await Load(id, clip)) return NotFound();
        var swing = int.TryParse(Swing, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;
        var said = await say.Of(Clip.Id, Terms.TryParse<View>(Seen, out var view) ? view : Domain.Measuring.View.Device, swing, Actor);
        return said.TryGet(out var take) ? Done($"/lessons/{id}/takes/{take.Value}", "The clip belongs to this take now.") : Refuse(said.Refusals, "");
    }

    private async Task<bool> Load(Guid id, Guid clip)
    {
        if (await page.Of(LessonId.From(id)) is not { Permission: MediaPermission.Given } view || view.Clips.FirstOrDefault(c => c.Id.Value == clip) is not { } found) return false;
        (View, Clip) = (view, found);
        return true;
    }
}
