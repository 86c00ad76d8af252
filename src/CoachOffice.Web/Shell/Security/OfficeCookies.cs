using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Shell.Security;

/// <summary>Cookies of the signed-in. A session lasts a working day and then ends, used or not.</summary>
internal static class OfficeCookies
{
    public const string SignInPath = "/sign-in";
    private static readonly TimeSpan WorkingDay = TimeSpan.FromHours(12);
    private static readonly TimeSpan BetweenSteps = TimeSpan.FromMinutes(10);

    public static void AddOfficeCookies(this IServiceCollection services, CookieNames names)
    {
        services.AddAuthentication(IdentityConstants.ApplicationScheme).AddIdentityCookies();
        services.ConfigureApplicationCookie(options =>
        {
            Shape(options, names, "coachoffice");
            options.ExpireTimeSpan = WorkingDay;
            options.SlidingExpiration = false;
            options.LoginPath = SignInPath;
            options.ReturnUrlParameter = "next";
            // A role that may not gets our 403 page in place, not a redirect.
            options.Events.OnRedirectToAccessDenied = static context =>
            {
                context.Response.StatusCode = StatusCodes.Status403Forbidden;
                return Task.CompletedTask;
            };
        });
        services.Configure<CookieAuthenticationOptions>(IdentityConstants.TwoFactorUserIdScheme, options =>
        {
            Shape(options, names, "coachoffice-step");
            options.ExpireTimeSpan = BetweenSteps;
        });
        services.Configure<CookieTempDataProviderOptions>(options =>
        {
            options.Cookie.Name = names.Of("coachoffice-notice");
            options.Cookie.SecurePolicy = names.Secure;
            options.Cookie.IsEssential = true;
            options.Cookie.SameSite = SameSiteMode.Lax;
        });
    }

    private static void Shape(CookieAuthenticationOptions options, CookieNames names, string name)
    {
        options.Cookie.Name = names.Of(name);
        options.Cookie.SecurePolicy = names.Secure;
        options.Cookie.HttpOnly = true;
        options.Cookie.SameSite = SameSiteMode.Lax;
        options.Cookie.Path = "/";
        options.Cookie.IsEssential = true;
    }
}
