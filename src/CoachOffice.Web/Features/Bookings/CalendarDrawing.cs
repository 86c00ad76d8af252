using CoachOffice.UseCases.Bookings;
using Microsoft.AspNetCore.Html;

namespace CoachOffice.Web.Features.Bookings;

/// <summary>Some days of the calendar, laid out, and put into words once for everybody who looks at them.</summary>
internal sealed class CalendarDrawing(CalendarView view)
{
    public CalendarView View => view;

    public CalendarGrid Grid { get; } = new(view, view.Wish is { Days: 1, Coach: null } && view.Coaches.Count > 1);

    /// <summary>The days as the page shows them; null before somebody looked.</summary>
    public IHtmlContent? Written { get; set; }
}
