using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Calendars;

/// <summary>The starts an RRULE gives, as wall clock: RFC 5545 counts in local time, whatever clock changes lie between.</summary>
public static class RuleDates
{
    /// <summary>No row of lessons is longer; a rule without end stops here.</summary>
    public const int Most = 1000;

    /// <summary>All of them, first to last.</summary>
    /// <param name="rule">RFC 5545 RRULE value.</param>
    /// <param name="first">DTSTART, which is always one of them.</param>
    /// <param name="zone">IANA zone id in which an UNTIL given in UTC is read.</param>
    public static IReadOnlyList<LocalDateTime> Of(string rule, LocalDateTime first, string zone)
    {
        var read = new RecurrenceRule(rule);
        if (read.Until is { IsUtc: true } until) read.Until = Floating(Instant.FromDateTimeUtc(until.AsUtc).InZone(DateTimeZoneProviders.Tzdb[zone]).LocalDateTime);
        var row = new CalendarEvent { DtStart = Floating(first), RecurrenceRule = read };
        return [.. row.GetOccurrences().Take(Most).Select(o => LocalDateTime.FromDateTime(o.Period.StartTime.Value))];
    }

    private static CalDateTime Floating(LocalDateTime local) => new(local.ToDateTimeUnspecified(), tzId: null);
}
