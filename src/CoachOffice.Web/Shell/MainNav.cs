namespace CoachOffice.Web.Shell;

/// <summary>The main menu, in the order of a working day.</summary>
internal static class MainNav
{
    public static IReadOnlyList<(string Name, string Href)> Entries { get; } =
    [
        ("Today", "/"),
        ("Students", "/students"),
        ("Follow-ups", "/follow-ups"),
        ("Rulebook", "/rulebook"),
        ("Settings", "/settings"),
    ];
}
