using Microsoft.AspNetCore.HttpOverrides;

namespace CoachOffice.Web.Shell.Security;

/// <summary>
/// Headers that name another sender are ignored, for anyone can write them. With the setting <c>Office:TrustLocalProxy</c> they are believed from
/// this machine only: a web server on it then does the https, and tells us the scheme and the visitor's address.
/// </summary>
internal static class LocalProxy
{
    public static bool IsTrusted(IConfiguration configuration) => configuration.GetValue("Office:TrustLocalProxy", false);

    public static void UseLocalProxy(this WebApplication app)
    {
        if (!IsTrusted(app.Configuration)) return;
        app.UseForwardedHeaders(new ForwardedHeadersOptions { ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto });
    }
}
