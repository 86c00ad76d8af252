using CoachOffice.Domain.Bookings;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Calendars.Busy;

/// <summary>
/// The time one occurrence takes. A row with an end keeps its exact length over clock changes; days of a DURATION are days of the calendar, its hours are
/// exact (RFC 5545 3.3.6 and 3.8.5.3). Whole days, and times without a zone, are the practice's.
/// </summary>
internal static class BusySpan
{
    private static readonly NodaTime.Duration Longest = NodaTime.Duration.FromDays(400);

    public static Interval Of(CalendarEvent source, CalDateTime start, DateTimeZone zone)
    {
        var from = At(start, zone);
        var until = source.Duration is { } duration ? Later(start, duration, zone) : source.DtEnd is { } end ? Ended(source, start, end, zone) : start.HasTime ? from : At(start.AddDays(1), zone);
        return new Interval(from, Instant.Min(Instant.Max(from, until), from + Longest));
    }

    private static Instant Ended(CalendarEvent source, CalDateTime start, CalDateTime end, DateTimeZone zone) => start.HasTime
        ? At(start, zone) + (At(end, zone) - At(source.DtStart!, zone))
        : At(start.AddDays(end.Date.DayNumber - source.DtStart!.Date.DayNumber), zone);

    private static Instant Later(CalDateTime start, Ical.Net.DataTypes.Duration duration, DateTimeZone zone)
    {
        var sign = duration.Sign;
        var days = start.AddDays(sign * (Math.Abs(duration.Weeks ?? 0) * 7 + Math.Abs(duration.Days ?? 0)));
        return At(days, zone) + NodaTime.Duration.FromSeconds(sign * (Math.Abs(duration.Hours ?? 0) * 3600L + Math.Abs(duration.Minutes ?? 0) * 60L + Math.Abs(duration.Seconds ?? 0)));
    }

    private static Instant At(CalDateTime time, DateTimeZone zone) =>
        time is { HasTime: true, IsFloating: false } ? Instant.FromDateTimeUtc(time.AsUtc) : LocalTimes.At(LocalDateTime.FromDateTime(time.Value), zone);
}
