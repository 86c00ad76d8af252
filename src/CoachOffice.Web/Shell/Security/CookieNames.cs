namespace CoachOffice.Web.Shell.Security;

/// <summary>
/// Cookies carry the <c>__Host-</c> prefix where the office is reached by https: the browser then takes them from this host only.
/// Over plain http on localhost browsers refuse that prefix (it demands Secure, and Safari knows no exception for localhost), so the name is plain there.
/// </summary>
internal sealed class CookieNames
{
    public CookieNames(IConfiguration configuration)
    {
        var addresses = configuration[WebHostDefaults.ServerUrlsKey] ?? "";
        Https = LocalProxy.IsTrusted(configuration) || addresses.Contains("https://", StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>True when the office is reached by https.</summary>
    public bool Https { get; }

    /// <summary>What the Secure attribute follows.</summary>
    public CookieSecurePolicy Secure => Https ? CookieSecurePolicy.Always : CookieSecurePolicy.SameAsRequest;

    /// <summary>The full name of a cookie of ours.</summary>
    public string Of(string name) => Https ? "__Host-" + name : name;
}
