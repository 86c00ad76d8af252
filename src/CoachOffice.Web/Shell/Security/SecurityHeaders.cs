namespace CoachOffice.Web.Shell.Security;

/// <summary>Headers of every answer. Values follow the OWASP Secure Headers list.</summary>
internal static class SecurityHeaders
{
    /// <summary>For the clock's own dashboard, whose pages carry inline script and style we can't change; owners only.</summary>
    public const string ClockDashboard = "clock-dashboard";

    /// <summary>For the bytes of a still or clip: shown inside our pages, and opened alone they can do nothing.</summary>
    public const string Media = "media";

    private const int OneYearInSeconds = 31_536_000;

    public static void AddSecurityHeaders(this IServiceCollection services) =>
        services.AddSecurityHeaderPolicies()
            .SetDefaultPolicy(static headers => Common(headers).AddContentSecurityPolicy(Strict))
            .AddPolicy(ClockDashboard, static headers => Common(headers).AddContentSecurityPolicy(WithInline))
            .AddPolicy(Media, static headers => Common(headers).AddContentSecurityPolicy(Shut));

    private static HeaderPolicyCollection Common(HeaderPolicyCollection headers) =>
        headers
            .AddFrameOptionsDeny()
            .AddContentTypeOptionsNoSniff()
            .AddReferrerPolicyNoReferrer()
            .AddStrictTransportSecurityMaxAgeIncludeSubDomains(OneYearInSeconds)
            .AddCrossOriginOpenerPolicy(static b => b.SameOrigin())
            .AddCrossOriginResourcePolicy(static b => b.SameOrigin())
            .AddCustomHeader("Permissions-Policy", "accelerometer=(), camera=(), geolocation=(), gyroscope=(), magnetometer=(), microphone=(), payment=(), usb=()")
            .RemoveServerHeader();

    private static void Strict(CspBuilder csp)
    {
        csp.AddDefaultSrc().None();
        csp.AddScriptSrc().Self();
        csp.AddStyleSrc().Self();
        csp.AddImgSrc().Self().Data();
        csp.AddMediaSrc().Self();
        csp.AddFontSrc().Self();
        csp.AddConnectSrc().Self();
        csp.AddManifestSrc().Self();
        csp.AddFormAction().Self();
        Closed(csp);
    }

    private static void WithInline(CspBuilder csp)
    {
        csp.AddDefaultSrc().None();
        csp.AddScriptSrc().Self().UnsafeInline();
        csp.AddStyleSrc().Self().UnsafeInline();
        csp.AddImgSrc().Self().Data();
        csp.AddFontSrc().Self();
        csp.AddConnectSrc().Self();
        csp.AddFormAction().Self();
        Closed(csp);
    }

    private static void Shut(CspBuilder csp)
    {
        csp.AddDefaultSrc().None();
        csp.AddSandbox();
        csp.AddFormAction().None();
        Closed(csp);
    }

    private static void Closed(CspBuilder csp)
    {
        csp.AddObjectSrc().None();
        csp.AddBaseUri().None();
        csp.AddFrameAncestors().None();
        csp.AddReportUri().To(AnonymousPages.CspReport);
    }
}
