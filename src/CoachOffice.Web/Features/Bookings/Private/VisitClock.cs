using System.Globalization;
using NodaTime;

namespace CoachOffice.Web.Features.Bookings.Private;

/// <summary>Times as a student reads them: the practice's clock with its zone's name, and the reader's own where it shows another time.</summary>
/// <param name="Practice">Zone of the practice.</param>
/// <param name="Reader">Zone the reader chose; null: the practice's.</param>
internal sealed record VisitClock(DateTimeZone Practice, DateTimeZone? Reader)
{
    /// <summary>"Tuesday 14 April 2026".</summary>
    public static string Day(LocalDate day) => day.ToString("dddd d MMMM uuuu", CultureInfo.InvariantCulture);

    /// <summary>"Tue 14 April".</summary>
    public static string ShortDay(LocalDate day) => day.ToString("ddd d MMMM", CultureInfo.InvariantCulture);

    /// <summary>"Europe/London", as a person reads it.</summary>
    public static string Named(DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(zone);
        return zone.Id.Replace('_', ' ');
    }

    /// <summary>"Tuesday 14 April 2026, 10:00 to 11:00 (Europe/London)".</summary>
    public string Lesson(Instant starts, Instant ends) => $"{Day(starts.InZone(Practice).Date)}, {Time(starts, Practice)} to {Time(ends, Practice)} ({Named(Practice)})";

    /// <summary>"Tuesday 14 April, 10:00 (Europe/London)".</summary>
    public string Moment(Instant at) => $"{at.InZone(Practice).Date.ToString("dddd d MMMM", CultureInfo.InvariantCulture)}, {Time(at, Practice)} ({Named(Practice)})";

    /// <summary>"10:00".</summary>
    public string Time(Instant at) => Time(at, Practice);

    /// <summary>"Tuesday 14 April, 19:00 in Australia/Sydney"; null where the reader's clock shows the same.</summary>
    public string? Yours(Instant at)
    {
        if (Reader is null || Reader.GetUtcOffset(at) == Practice.GetUtcOffset(at)) return null;
        var there = at.InZone(Reader);
        var day = there.Date == at.InZone(Practice).Date ? "" : $"{there.Date.ToString("dddd d MMMM", CultureInfo.InvariantCulture)}, ";
        return $"{day}{Time(at, Reader)} in {Named(Reader)}";
    }

    private static string Time(Instant at, DateTimeZone zone) => at.InZone(zone).TimeOfDay.ToString("HH:mm", CultureInfo.InvariantCulture);
}
