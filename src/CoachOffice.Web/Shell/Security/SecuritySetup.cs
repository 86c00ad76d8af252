namespace CoachOffice.Web.Shell.Security;

/// <summary>Deny by default, our own cookies, proof of origin on every form.</summary>
internal static class SecuritySetup
{
    public static void AddShellSecurity(this IServiceCollection services, IConfiguration configuration)
    {
        var cookies = new CookieNames(configuration);
        services.AddSingleton(cookies);
        services.AddSingleton<CspReports>();
        services.AddSecurityHeaders();
        services.AddAntiforgery(options =>
        {
            options.Cookie.Name = cookies.Of("coachoffice-form");
            options.Cookie.SecurePolicy = cookies.Secure;
            options.Cookie.SameSite = SameSiteMode.Strict;
            options.FormFieldName = "form-proof";
            options.HeaderName = "X-Form-Proof";
            // We set frame-ancestors and X-Frame-Options ourselves.
            options.SuppressXFrameOptionsHeader = true;
        });
        services.AddOfficeCookies(cookies);
        services.AddOfficePolicies();
        services.AddOfficeSessions();
    }
}
