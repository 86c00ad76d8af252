using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using NodaTime;
using NodaTime.TimeZones;

namespace CoachOffice.UseCases.Bookings.Calendars;

/// <summary>
/// The rules of a zone as a VTIMEZONE (RFC 5545 3.6.5). Where a zone changes its clocks by the same two rules each year, the library writes those; where it
/// does not (Morocco goes by the moon), every change in the years asked for stands there with its date.
/// </summary>
internal static class ZoneRules
{
    // What a row without an end is looked at for; a calendar that is followed is written anew each time.
    private const int YearsAhead = 3;

    public static VTimeZone Of(string zone, LocalDate first, LocalDate last)
    {
        var tzdb = DateTimeZoneProviders.Tzdb[zone];
        var years = new Interval(Start(first.Year - 1), Start(last.Year + YearsAhead));
        var rules = IsRegular(tzdb, years) ? VTimeZone.FromDateTimeZone(zone, new DateTime(first.Year - 1, 1, 1, 0, 0, 0, DateTimeKind.Unspecified), includeHistoricalData: false) : ByDate(tzdb, years);

        // A name of one maker's own that stricter readers refuse.
        rules.Properties.Remove("X-LIC-LOCATION");
        return rules;
    }

    private static Instant Start(int year) => Instant.FromUtc(year, 1, 1, 0, 0);

    // The same changes on the same weekday of the month, counted from its start or from its end, in every year.
    private static bool IsRegular(DateTimeZone zone, Interval years)
    {
        var byYear = Changes(zone, years).Select(c => YearlyChange.Of(c, Before(zone, c))).GroupBy(c => c.Year).Select(g => g.ToList()).ToList();
        if (byYear.Count == 0) return true;
        var each = byYear[0].Count;
        return each == 2 && byYear.Count == years.End.InUtc().Year - years.Start.InUtc().Year && byYear.TrueForAll(y => y.Count == each)
            && Enumerable.Range(0, each).All(n => AreOne(byYear.Select(y => y[n].FromStart)) || AreOne(byYear.Select(y => y[n].FromEnd)));
    }

    private static bool AreOne<T>(IEnumerable<T> all) => all.Distinct().Count() == 1;

    private static VTimeZone ByDate(DateTimeZone zone, Interval years)
    {
        var rules = new VTimeZone(zone.Id);
        foreach (var change in Changes(zone, years).Prepend(zone.GetZoneInterval(years.Start)))
        {
            var before = Before(zone, change).WallOffset;
            var from = change.HasStart ? Instant.Max(change.Start, years.Start) : years.Start;
            rules.AddChild(new VTimeZoneInfo(change.Savings == Offset.Zero ? Components.Standard : Components.Daylight)
            {
                DtStart = new CalDateTime(from.WithOffset(before).LocalDateTime.ToDateTimeUnspecified(), tzId: null),
                OffsetFrom = new UtcOffset(before.ToTimeSpan()),
                OffsetTo = new UtcOffset(change.WallOffset.ToTimeSpan()),
                TimeZoneName = change.Name,
            });
        }

        return rules;
    }

    private static IEnumerable<ZoneInterval> Changes(DateTimeZone zone, Interval years) => zone.GetZoneIntervals(years).Where(i => i.HasStart && i.Start > years.Start);

    private static ZoneInterval Before(DateTimeZone zone, ZoneInterval change) => change.HasStart ? zone.GetZoneInterval(change.Start - NodaTime.Duration.Epsilon) : change;
}
