using System.Security.Claims;
using CoachOffice.Web.Shell.Security;

namespace CoachOffice.Web.Shell;

/// <summary>The main menu, in the order of a working day; what a role may not open is not offered to it.</summary>
internal static class MainNav
{
    private static readonly (string Name, string Href)[] Everyone =
    [
        ("Today", "/"),
        ("Students", "/students"),
        ("Follow-ups", "/follow-ups"),
        ("Rulebook", "/rulebook"),
    ];

    private static readonly (string Name, string Href)[] Owner = [.. Everyone, ("Settings", "/settings")];

    public static IReadOnlyList<(string Name, string Href)> For(ClaimsPrincipal person) => person.AsActor().MayOwn ? Owner : Everyone;
}
