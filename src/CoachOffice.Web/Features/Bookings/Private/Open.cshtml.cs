using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using CoachOffice.Web.Features.Plans.Private;
using CoachOffice.Web.Features.Problem;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.AspNetCore.RateLimiting;

namespace CoachOffice.Web.Features.Bookings.Private;

/// <summary>Takes the token out of the address: a limited cookie instead, and on to the student's lessons. Nothing is shown and nothing of the bookings changes.</summary>
[EnableRateLimiting(RateLimits.Links)]
public sealed class OpenModel(PrivateLinks links) : PageModel
{
    // The pages with one button a reminder leads to.
    private static readonly string[] Deeds = ["coming", "cancel"];

    public async Task<IActionResult> OnGetAsync(string token, string? deed, Guid? id)
    {
        if (await links.OpenVisits(token, HttpContext.RequestAborted) is not { } pass)
        {
            Problems.Explain(HttpContext, LinkDoor.Closed);
            return NotFound();
        }

        await HttpContext.SignInAsync(VisitDoor.Scheme, VisitDoor.For(pass), new AuthenticationProperties { IsPersistent = true });
        return LocalRedirect(id is { } lesson && Deeds.Contains(deed) ? $"{OfficeLinks.MyLesson(BookingId.From(lesson))}/{deed}" : OfficeLinks.MyLessons);
    }
}
