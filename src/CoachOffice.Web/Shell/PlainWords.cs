namespace CoachOffice.Web.Shell;

/// <summary>Words of the closed lists as a person reads them.</summary>
internal static class PlainWords
{
    /// <summary><c>lower-back</c> is "lower back".</summary>
    public static string Of(string word) => word.Replace('-', ' ');

    /// <summary>The plain words of a member.</summary>
    public static string Of(Enum member) => Of(CoachOffice.Domain.Terms.Of(member));
}
