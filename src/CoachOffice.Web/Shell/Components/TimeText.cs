using System.Globalization;
using Microsoft.AspNetCore.Html;
using NodaTime;

namespace CoachOffice.Web.Shell.Components;

/// <summary>An instant in the practice's zone as markup, the same as <see cref="TimeShown"/>: lists hold hundreds, and a component each costs more than all the rest of such a page.</summary>
internal static class TimeText
{
    public static IHtmlContent Html(Instant at, DateTimeZone practice) => new HtmlString(
        $"""<time datetime="{at.ToString("uuuu-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture)}">{at.InZone(practice).LocalDateTime.ToString("d MMM uuuu, HH:mm", CultureInfo.InvariantCulture)}</time>""");
}
