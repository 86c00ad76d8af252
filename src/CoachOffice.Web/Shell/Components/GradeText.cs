using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using Microsoft.AspNetCore.Html;

namespace CoachOffice.Web.Shell.Components;

/// <summary>A grade as word, sign and colour together; never colour alone.</summary>
internal static class GradeText
{
    public static IHtmlContent Html(Grade grade, Side side) => new HtmlString(Markup(grade, side));

    public static string Markup(Grade grade, Side side) =>
        $"""<span class="grade grade-{Terms.Of(grade)}"><span class="sign" aria-hidden="true">{Sign(grade, side)}</span>{Word(grade, side)}</span>""";

    private static string Sign(Grade grade, Side side)
    {
        var arrow = side == Side.Low ? "↓" : "↑";
        return grade switch
        {
            Grade.InRange => "✓",
            Grade.Borderline => "≈",
            Grade.Mild => arrow,
            Grade.Moderate => arrow + arrow,
            Grade.Marked => arrow + arrow + arrow,
            _ => "–",
        };
    }

    private static string Word(Grade grade, Side side) => grade switch
    {
        Grade.NoRange => "no range",
        Grade.InRange => "in range",
        _ when side == Side.None => Terms.Of(grade),
        _ => $"{Terms.Of(grade)}, {Terms.Of(side)}",
    };
}
