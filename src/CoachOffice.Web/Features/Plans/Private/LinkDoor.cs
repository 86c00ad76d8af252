using System.Security.Claims;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.Web.Features.Problem;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authentication.Cookies;
using NodaTime;

namespace CoachOffice.Web.Features.Plans.Private;

/// <summary>The limited cookie a private link is exchanged for: it opens one plan of one student and nothing of the office, and ends with its link.</summary>
internal static class LinkDoor
{
    public const string Scheme = "plan-link";

    private const string Link = "link";
    private const string PlanClaim = "plan";
    private const string Student = "student";
    private static readonly TimeSpan Fortnight = TimeSpan.FromDays(14);

    /// <summary>Said where a link opens nothing; it never says which of the reasons it is.</summary>
    public static ProblemText Closed { get; } = new(
        "This link does not open anything now",
        "It may have ended or been replaced by a newer one. Open the link in the last message from your coach, or ask them for a new one. Nothing you told us is lost.",
        ForStudent: true);

    public static void AddLinkDoor(this IServiceCollection services, IConfiguration configuration)
    {
        var names = new CookieNames(configuration);
        services.AddAuthentication().AddCookie(Scheme, options =>
        {
            options.Cookie.Name = names.Of("coachoffice-plan");
            options.Cookie.SecurePolicy = names.Secure;
            options.Cookie.HttpOnly = true;
            options.Cookie.SameSite = SameSiteMode.Lax;
            options.Cookie.Path = "/";
            options.Cookie.IsEssential = true;
            // Max-age beside the date: a phone whose clock is wrong keeps the cookie as long as the others.
            options.Cookie.MaxAge = Fortnight;
            options.ExpireTimeSpan = Fortnight;
            options.SlidingExpiration = false;
            options.Events.OnValidatePrincipal = EndWithTheLink;
            options.Events.OnRedirectToLogin = static context => Refuse(context.HttpContext);
            options.Events.OnRedirectToAccessDenied = static context => Refuse(context.HttpContext);
        });
    }

    public static ClaimsPrincipal For(LinkPass pass) => new(new ClaimsIdentity(
        [new Claim(Link, pass.LinkId.ToString()), new Claim(PlanClaim, pass.PlanId.Value.ToString()), new Claim(Student, pass.StudentId.Value.ToString())], Scheme));

    public static LinkPass AsPass(this ClaimsPrincipal person) =>
        new(StudentId.From(Of(person, Student)), PlanId.From(Of(person, PlanClaim)), Of(person, Link));

    private static Guid Of(ClaimsPrincipal person, string claim) => Guid.Parse(person.FindFirstValue(claim)!);

    private static async Task EndWithTheLink(CookieValidatePrincipalContext context)
    {
        var services = context.HttpContext.RequestServices;
        var link = Guid.TryParse(context.Principal?.FindFirstValue(Link), out var id) ? id : Guid.Empty;
        var now = services.GetRequiredService<IClock>().GetCurrentInstant();
        if (await services.GetRequiredService<CheckLink>().StillOpen(link, now, context.HttpContext.RequestAborted) is null) context.RejectPrincipal();
    }

    private static Task Refuse(HttpContext context)
    {
        Problems.Explain(context, Closed);
        context.Response.StatusCode = StatusCodes.Status404NotFound;
        return Task.CompletedTask;
    }
}
