using Microsoft.AspNetCore.Mvc.ApplicationModels;

namespace CoachOffice.Web.Shell.Security;

/// <summary>The one list of what a stranger may open. Everything else asks for an account; a test compares this list with the routes.</summary>
internal static class AnonymousPages
{
    public const string Health = "/health";

    /// <summary>Whether the program runs.</summary>
    public const string Live = "/health/live";

    /// <summary>Whether this node may be sent visitors.</summary>
    public const string Ready = "/health/ready";

    public const string CspReport = "/csp-report";

    /// <summary>A calendar that programs follow; the secret in the address is the proof.</summary>
    public const string CalendarFeed = "/calendar/{token}.ics";

    /// <summary>Notices of undelivered mail; the signature is the proof, and without a secret nothing is there.</summary>
    public const string Bounces = "/mail/bounces";

    /// <summary>Pages by their path under Features.</summary>
    public static IReadOnlyList<string> Pages { get; } =
    [
        "/Access/FirstRun",
        "/Access/DemoProgress",
        "/Access/SignIn",
        "/Access/SecondStep",
        "/Access/SignedOut",
        "/Problem/Index",
        "/Plans/Private/Open",
        "/Bookings/Private/Open",
        "/FollowUps/Stop",
    ];

    /// <summary>Addresses that are no pages.</summary>
    public static IReadOnlyList<string> Routes { get; } = [Health, Live, Ready, CspReport, CalendarFeed, Bounces];

    public static void Allow(PageConventionCollection conventions)
    {
        foreach (var page in Pages) conventions.AllowAnonymousToPage(page);
    }
}
