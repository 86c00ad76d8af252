using System.Globalization;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Bookings.Calendars;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.UseCases.Tests.Bookings.Calendars;

/// <summary>
/// Examples of RFC 5545 section 3.8.5.3 (pages 123 to 132): TZID=America/New_York, 09:00 local. The table was seen in the RFC's text and expanded once
/// more by another program (dateutil 2.8.2).
/// </summary>
public sealed class RuleDatesTests
{
    private const string NewYork = "America/New_York";
    private static readonly DateTimeZone Zone = DateTimeZoneProviders.Tzdb[NewYork];

    [Theory]
    [InlineData("1997-09-02", "FREQ=DAILY;COUNT=10", "1997-09-02 1997-09-03 1997-09-04 1997-09-05 1997-09-06 1997-09-07 1997-09-08 1997-09-09 1997-09-10 1997-09-11")]
    [InlineData("1997-09-02", "FREQ=DAILY;INTERVAL=10;COUNT=5", "1997-09-02 1997-09-12 1997-09-22 1997-10-02 1997-10-12")]
    [InlineData("1997-09-02", "FREQ=WEEKLY;COUNT=10", "1997-09-02 1997-09-09 1997-09-16 1997-09-23 1997-09-30 1997-10-07 1997-10-14 1997-10-21 1997-10-28 1997-11-04")]
    [InlineData("1997-09-01", "FREQ=WEEKLY;INTERVAL=2;UNTIL=19971224T000000Z;WKST=SU;BYDAY=MO,WE,FR", "1997-09-01 1997-09-03 1997-09-05 1997-09-15 1997-09-17 1997-09-19 1997-09-29 1997-10-01 1997-10-03 1997-10-13 1997-10-15 1997-10-17 1997-10-27 1997-10-29 1997-10-31 1997-11-10 1997-11-12 1997-11-14 1997-11-24 1997-11-26 1997-11-28 1997-12-08 1997-12-10 1997-12-12 1997-12-22")]
    [InlineData("1997-09-02", "FREQ=WEEKLY;INTERVAL=2;COUNT=8;WKST=SU;BYDAY=TU,TH", "1997-09-02 1997-09-04 1997-09-16 1997-09-18 1997-09-30 1997-10-02 1997-10-14 1997-10-16")]
    [InlineData("1997-09-05", "FREQ=MONTHLY;COUNT=10;BYDAY=1FR", "1997-09-05 1997-10-03 1997-11-07 1997-12-05 1998-01-02 1998-02-06 1998-03-06 1998-04-03 1998-05-01 1998-06-05")]
    [InlineData("1997-09-22", "FREQ=MONTHLY;COUNT=6;BYDAY=-2MO", "1997-09-22 1997-10-20 1997-11-17 1997-12-22 1998-01-19 1998-02-16")]
    [InlineData("1997-09-28", "FREQ=MONTHLY;BYMONTHDAY=-3;COUNT=6", "1997-09-28 1997-10-29 1997-11-28 1997-12-29 1998-01-29 1998-02-26")]
    [InlineData("1997-09-30", "FREQ=MONTHLY;COUNT=10;BYMONTHDAY=1,-1", "1997-09-30 1997-10-01 1997-10-31 1997-11-01 1997-11-30 1997-12-01 1997-12-31 1998-01-01 1998-01-31 1998-02-01")]
    [InlineData("1997-09-10", "FREQ=MONTHLY;INTERVAL=18;COUNT=10;BYMONTHDAY=10,11,12,13,14,15", "1997-09-10 1997-09-11 1997-09-12 1997-09-13 1997-09-14 1997-09-15 1999-03-10 1999-03-11 1999-03-12 1999-03-13")]
    [InlineData("1997-01-01", "FREQ=YEARLY;INTERVAL=3;COUNT=10;BYYEARDAY=1,100,200", "1997-01-01 1997-04-10 1997-07-19 2000-01-01 2000-04-09 2000-07-18 2003-01-01 2003-04-10 2003-07-19 2006-01-01")]
    [InlineData("1997-09-04", "FREQ=MONTHLY;COUNT=3;BYDAY=TU,WE,TH;BYSETPOS=3", "1997-09-04 1997-10-07 1997-11-06")]
    [InlineData("1997-08-05", "FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=MO", "1997-08-05 1997-08-10 1997-08-19 1997-08-24")]
    [InlineData("1997-08-05", "FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=SU", "1997-08-05 1997-08-17 1997-08-19 1997-08-31")]
    [InlineData("2007-01-15", "FREQ=MONTHLY;BYMONTHDAY=15,30;COUNT=5", "2007-01-15 2007-01-30 2007-02-15 2007-03-15 2007-03-30")]
    public void A_rule_gives_the_days_the_standard_prints(string first, string rule, string expected) =>
        Assert.Equal(expected, string.Join(' ', RuleDates.Of(rule, Nine(first), NewYork).Select(d => At(d, 9))));

    /// <summary>RR-02: 113 days, the last one 23 December at 09:00 EST.</summary>
    [Fact]
    public void An_end_in_UTC_is_read_in_the_zone()
    {
        var days = RuleDates.Of("FREQ=DAILY;UNTIL=19971224T000000Z", Nine("1997-09-02"), NewYork);

        Assert.Equal((113, Nine("1997-12-23")), (days.Count, days[^1]));
        Assert.Equal(days, Enumerable.Range(0, 113).Select(n => Nine("1997-09-02").PlusDays(n)));
        Assert.Equal(Offset.FromHours(-4), OffsetOf(Nine("1997-10-25")));
        Assert.Equal(Offset.FromHours(-5), OffsetOf(Nine("1997-10-26")));
        Assert.Equal(Instant.FromUtc(1997, 12, 23, 14, 0), LocalTimes.At(days[^1], Zone));
    }

    /// <summary>RR-15: every Friday the 13th, the first start taken out.</summary>
    [Fact]
    public void A_start_that_is_taken_out_does_not_come()
    {
        var row = new CalendarEvent { DtStart = new CalDateTime(1997, 9, 2, 9, 0, 0, NewYork), RecurrenceRule = new RecurrenceRule("FREQ=MONTHLY;BYDAY=FR;BYMONTHDAY=13;COUNT=6") };
        row.ExceptionDates.Add(row.DtStart);

        Assert.Equal(["1998-02-13", "1998-03-13", "1998-11-13", "1999-08-13", "2000-10-13"], row.GetOccurrences().Take(5).Select(o => At(LocalDateTime.FromDateTime(o.Period.StartTime.Value), 9)));
    }

    /// <summary>RR-22.</summary>
    [Fact]
    public void Minutes_too() =>
        Assert.Equal("09:00 09:15 09:30 09:45 10:00 10:15", string.Join(' ', RuleDates.Of("FREQ=MINUTELY;INTERVAL=15;COUNT=6", Nine("1997-09-02"), NewYork).Select(t => t.TimeOfDay.ToString("HH:mm", CultureInfo.InvariantCulture))));

    /// <summary>The standard prints a third start, 15:00, for an end at 17:00Z, which is 13:00 in New York: an erratum (from memory); a right reading gives two.</summary>
    [Fact]
    public void The_standards_own_slip_is_not_repeated() =>
        Assert.Equal("09:00 12:00", string.Join(' ', RuleDates.Of("FREQ=HOURLY;INTERVAL=3;UNTIL=19970902T170000Z", Nine("1997-09-02"), NewYork).Select(t => t.TimeOfDay.ToString("HH:mm", CultureInfo.InvariantCulture))));

    /// <summary>Two cases of the library's own table RecurrenceTestCases.txt, made from the standard's grammar.</summary>
    [Theory]
    [InlineData("2024-10-24", "FREQ=WEEKLY;BYDAY=MO,TH;COUNT=3", "2024-10-24 2024-10-28 2024-10-31")]
    [InlineData("2024-12-31", "FREQ=YEARLY;BYWEEKNO=1;BYDAY=MO,TU;INTERVAL=3;UNTIL=20320101", "2024-12-31 2028-01-03 2028-01-04 2030-12-30 2030-12-31")]
    public void Weeks_of_the_year_too(string first, string rule, string expected) =>
        Assert.Equal(expected, string.Join(' ', RuleDates.Of(rule, LocalDatePattern.Iso.Parse(first).Value.AtMidnight(), NewYork).Select(d => At(d, 0))));

    [Fact]
    public void A_rule_without_end_stops_somewhere() => Assert.Equal(RuleDates.Most, RuleDates.Of("FREQ=DAILY", Nine("2026-01-01"), NewYork).Count);

    private static LocalDateTime Nine(string day) => LocalDatePattern.Iso.Parse(day).Value.At(new LocalTime(9, 0));

    private static string At(LocalDateTime local, int hour)
    {
        Assert.Equal(new LocalTime(hour, 0), local.TimeOfDay);
        return LocalDatePattern.Iso.Format(local.Date);
    }

    private static Offset OffsetOf(LocalDateTime local) => local.InZoneStrictly(Zone).Offset;
}
