using CoachOffice.UseCases.FollowUps;
using CoachOffice.Web.Features.Plans.Private;
using Problems = CoachOffice.Web.Features.Problem.Problems;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.AspNetCore.RateLimiting;

namespace CoachOffice.Web.Features.FollowUps;

/// <summary>Stops reminders. Mail programs post here on their own (RFC 8058) with no cookie and no proof of origin; the token in the address is the proof.</summary>
[IgnoreAntiforgeryToken]
[EnableRateLimiting(RateLimits.Links)]
public sealed class StopModel(StopPage page, StopMessages stop) : PageModel
{
    public bool IsStopped { get; private set; }

    public string Practice { get; private set; } = "";

    public async Task<IActionResult> OnGetAsync(string token) => Show(await page.Of(token));

    public async Task<IActionResult> OnPostAsync(string token) => Show((await stop.By(token)).TryGet(out var pass) ? pass with { AlreadyStopped = true } : null);

    private IActionResult Show(StopPass? pass)
    {
        if (pass is null)
        {
            Problems.Explain(HttpContext, LinkDoor.Closed);
            return NotFound();
        }

        (IsStopped, Practice) = (pass.AlreadyStopped, pass.Practice);
        return Page();
    }
}
