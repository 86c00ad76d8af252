using CoachOffice.UseCases.Access;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.AspNetCore.RateLimiting;

namespace CoachOffice.Web.Features.Bookings.Private;

/// <summary>A page behind a link to the lessons: it knows one student and no account.</summary>
[Authorize(AuthenticationSchemes = VisitDoor.Scheme)]
[EnableRateLimiting(RateLimits.Links)]
public abstract class VisitPage : PageModel
{
    /// <summary>Whose lessons the link opens.</summary>
    protected VisitPass Pass => User.AsVisitPass();
}
