namespace CoachOffice.Web.Shell;

/// <summary>Words of the closed lists as a person reads them.</summary>
internal static class Words
{
    /// <summary><c>lower-back</c> is "lower back".</summary>
    public static string Plain(string word) => word.Replace('-', ' ');

    /// <summary>The plain words of a member.</summary>
    public static string Plain(Enum member) => Plain(CoachOffice.Domain.Terms.Of(member));
}
