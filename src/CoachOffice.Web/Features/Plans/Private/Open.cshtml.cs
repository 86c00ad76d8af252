using CoachOffice.UseCases.Access;
using CoachOffice.Web.Features.Problem;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.AspNetCore.RateLimiting;

namespace CoachOffice.Web.Features.Plans.Private;

/// <summary>Takes the token out of the address: a limited cookie instead, and on to a clean page. Nothing is shown and nothing of the plan changes.</summary>
[EnableRateLimiting(RateLimits.Links)]
public sealed class OpenModel(PrivateLinks links) : PageModel
{
    public async Task<IActionResult> OnGetAsync(string token, string? note)
    {
        if (await links.Open(token, stop: HttpContext.RequestAborted) is not { } pass)
        {
            Problems.Explain(HttpContext, LinkDoor.Closed);
            return NotFound();
        }

        await HttpContext.SignInAsync(LinkDoor.Scheme, LinkDoor.For(pass), new AuthenticationProperties { IsPersistent = true });
        return LocalRedirect(note is null ? "/my-plan" : "/my-plan/practised");
    }
}
