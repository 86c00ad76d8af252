using CoachOffice.UseCases.Access;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.AspNetCore.RateLimiting;

namespace CoachOffice.Web.Features.Plans.Private;

/// <summary>A page behind a private link: it knows one plan and no account.</summary>
[Authorize(AuthenticationSchemes = LinkDoor.Scheme)]
[EnableRateLimiting(RateLimits.Links)]
public abstract class LinkPage : PageModel
{
    /// <summary>The one plan the link opens.</summary>
    protected LinkPass Pass => User.AsPass();
}
