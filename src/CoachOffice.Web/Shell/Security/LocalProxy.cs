using System.Net;
using Microsoft.AspNetCore.HttpOverrides;

namespace CoachOffice.Web.Shell.Security;

/// <summary>
/// Headers that name another sender are ignored, for anyone can write them. With the setting <c>Office:TrustLocalProxy</c> they are believed from
/// this machine only: a web server on it then does the https, and tells us the scheme and the visitor's address. <c>Office:TrustedProxies</c> names the addresses
/// of web servers on other machines, with commas, where several nodes stand behind one.
/// </summary>
internal static class LocalProxy
{
    private const string Named = "Office:TrustedProxies";

    public static bool IsTrusted(IConfiguration configuration) => configuration.GetValue("Office:TrustLocalProxy", false) || Others(configuration).Count > 0;

    public static void UseLocalProxy(this WebApplication app)
    {
        if (!IsTrusted(app.Configuration)) return;
        var options = new ForwardedHeadersOptions { ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto };
        foreach (var proxy in Others(app.Configuration)) options.KnownProxies.Add(proxy);
        app.UseForwardedHeaders(options);
    }

    private static IReadOnlyList<IPAddress> Others(IConfiguration configuration) =>
    [
        .. from word in (configuration[Named] ?? "").Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
        select IPAddress.TryParse(word, out var address) ? address : throw new InvalidOperationException($"{Named} holds '{word}'; write addresses such as 10.0.0.5 with commas between."),
    ];
}
