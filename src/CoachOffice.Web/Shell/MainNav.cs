using System.Security.Claims;
using CoachOffice.Domain.Access;
using CoachOffice.Web.Shell.Security;

namespace CoachOffice.Web.Shell;

/// <summary>The main menu, in the order of a working day; what a role may not open is not offered to it.</summary>
internal static class MainNav
{
    private static readonly (string Name, string Href, Func<Actor, bool> For)[] Entries =
    [
        ("Today", "/", static _ => true),
        ("Calendar", "/calendar", static actor => actor.MayKeepStudents),
        ("Students", "/students", static actor => actor.MayKeepStudents),
        ("Money", OfficeLinks.Money, static actor => actor.MayTakePayments),
        ("Follow-ups", OfficeLinks.FollowUps, static actor => actor.MayTeach),
        ("Rulebook", "/rulebook", static _ => true),
        ("Settings", "/settings", static actor => actor.MayOwn),
    ];

    public static IEnumerable<(string Name, string Href)> For(ClaimsPrincipal person)
    {
        var actor = person.AsActor();
        return Entries.Where(e => e.For(actor)).Select(e => (e.Name, e.Href));
    }
}
