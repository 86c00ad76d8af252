using System.Runtime.CompilerServices;
using System.Text.Encodings.Web;
using CoachOffice.UseCases.Bookings;
using Microsoft.AspNetCore.Html;
using Microsoft.AspNetCore.Mvc.Rendering;

namespace CoachOffice.Web.Features.Bookings;

/// <summary>Drawings of days that were read, forgotten with them.</summary>
internal static class CalendarDrawings
{
    private static readonly ConditionalWeakTable<CalendarView, CalendarDrawing> Known = [];

    public static CalendarDrawing Of(CalendarView view) => Known.GetValue(view, static v => new CalendarDrawing(v));

    /// <summary>The days of a drawing; two who look first at the same moment write the same.</summary>
    public static async Task<IHtmlContent> Drawn(this IHtmlHelper html, CalendarDrawing drawing)
    {
        if (drawing.Written is { } known) return known;
        await using var text = new StringWriter();
        (await html.PartialAsync("_Days", drawing)).WriteTo(text, HtmlEncoder.Default);
        return drawing.Written = new HtmlString(text.ToString());
    }
}
