using System.Globalization;
using NodaTime;

namespace CoachOffice.Web.Shell.Wording;

/// <summary>Spans of local time as a person reads them; whole days without times.</summary>
internal static class ExceptionWords
{
    public static string Span(LocalDateTime from, LocalDateTime until)
    {
        var whole = from.TimeOfDay == LocalTime.Midnight && until.TimeOfDay == LocalTime.Midnight;
        var last = whole ? until.Date.PlusDays(-1) : until.Date;
        if (whole) return from.Date == last ? Day(from.Date) : $"{Day(from.Date)} to {Day(last)}";
        return from.Date == last ? $"{Day(from.Date)}, {TimeEntry.Text(from.TimeOfDay)} to {TimeEntry.Text(until.TimeOfDay)}" : $"{Day(from.Date)}, {TimeEntry.Text(from.TimeOfDay)} to {Day(last)}, {TimeEntry.Text(until.TimeOfDay)}";
    }

    private static string Day(LocalDate day) => day.ToString("ddd d MMM uuuu", CultureInfo.InvariantCulture);
}
