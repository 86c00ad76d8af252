using System.Security.Claims;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.Web.Features.Plans.Private;
using CoachOffice.Web.Features.Problem;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authentication.Cookies;
using NodaTime;

namespace CoachOffice.Web.Features.Bookings.Private;

/// <summary>The limited cookie a link to the lessons is exchanged for: it opens one student's own bookings and nothing of plans or of the office, and ends with its link.</summary>
internal static class VisitDoor
{
    public const string Scheme = "visit-link";

    private const string Link = "link";
    private const string Student = "student";
    private static readonly TimeSpan Month = TimeSpan.FromDays(30);

    public static void AddVisitDoor(this IServiceCollection services, IConfiguration configuration)
    {
        var names = new CookieNames(configuration);
        services.AddAuthentication().AddCookie(Scheme, options =>
        {
            options.Cookie.Name = names.Of("coachoffice-visits");
            options.Cookie.SecurePolicy = names.Secure;
            options.Cookie.HttpOnly = true;
            options.Cookie.SameSite = SameSiteMode.Lax;
            options.Cookie.Path = "/";
            options.Cookie.IsEssential = true;
            // Max-age beside the date: a phone whose clock is wrong keeps the cookie as long as the others.
            options.Cookie.MaxAge = Month;
            options.ExpireTimeSpan = Month;
            options.SlidingExpiration = false;
            options.Events.OnValidatePrincipal = EndWithTheLink;
            options.Events.OnRedirectToLogin = static context => Refuse(context.HttpContext);
            options.Events.OnRedirectToAccessDenied = static context => Refuse(context.HttpContext);
        });
    }

    public static ClaimsPrincipal For(VisitPass pass) => new(new ClaimsIdentity(
        [new Claim(Link, pass.LinkId.ToString()), new Claim(Student, pass.StudentId.Value.ToString())], Scheme));

    public static VisitPass AsVisitPass(this ClaimsPrincipal person) =>
        new(StudentId.From(Of(person, Student)), Of(person, Link));

    private static Guid Of(ClaimsPrincipal person, string claim) => Guid.Parse(person.FindFirstValue(claim)!);

    private static async Task EndWithTheLink(CookieValidatePrincipalContext context)
    {
        var services = context.HttpContext.RequestServices;
        var link = Guid.TryParse(context.Principal?.FindFirstValue(Link), out var id) ? id : Guid.Empty;
        var now = services.GetRequiredService<IClock>().GetCurrentInstant();
        if (await services.GetRequiredService<CheckLink>().StillOpensVisits(link, now, context.HttpContext.RequestAborted) is null) context.RejectPrincipal();
    }

    private static Task Refuse(HttpContext context)
    {
        Problems.Explain(context, LinkDoor.Closed);
        context.Response.StatusCode = StatusCodes.Status404NotFound;
        return Task.CompletedTask;
    }
}
