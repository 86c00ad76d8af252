using CoachOffice.UseCases.Bookings.Calendars.Busy;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.UseCases.Tests.Bookings.Calendars;

public sealed class BusyReaderTests
{
    private static readonly DateTimeZone London = DateTimeZoneProviders.Tzdb["Europe/London"];
    private static readonly Instant Now = Instant.FromUtc(2026, 3, 2, 9, 0);

    [Theory]
    [InlineData("DTSTART:20260601T090000Z|DTEND:20260601T100000Z", "2026-06-01T09:00:00Z 2026-06-01T10:00:00Z")]
    [InlineData("DTSTART;TZID=America/New_York:20260601T090000|DURATION:PT45M", "2026-06-01T13:00:00Z 2026-06-01T13:45:00Z")]
    [InlineData("DTSTART;TZID=\"Europe/London\":20260601T090000|DTEND;TZID=\"Europe/London\":20260601T100000", "2026-06-01T08:00:00Z 2026-06-01T09:00:00Z")]
    [InlineData("DTSTART:20260601T090000|DTEND:20260601T100000", "2026-06-01T08:00:00Z 2026-06-01T09:00:00Z")]
    [InlineData("DTSTART;VALUE=DATE:20260601|DTEND;VALUE=DATE:20260603", "2026-05-31T23:00:00Z 2026-06-02T23:00:00Z")]
    [InlineData("DTSTART;VALUE=DATE:20260601", "2026-05-31T23:00:00Z 2026-06-01T23:00:00Z")]
    [InlineData("DTSTART;TZID=W. Europe Standard Time:20260601T090000|DTEND;TZID=W. Europe Standard Time:20260601T100000", "2026-06-01T07:00:00Z 2026-06-01T08:00:00Z")]
    [InlineData("DTSTART:20260302T080000Z|DTEND:20260302T093000Z", "2026-03-02T08:00:00Z 2026-03-02T09:30:00Z")]
    [InlineData("DTSTART:20260601T085960Z|DTEND:20260601T100000Z", "2026-06-01T08:59:59Z 2026-06-01T10:00:00Z")]
    public void One_event_is_one_time(string lines, string expected) => Assert.Equal(expected, Times(Read(Event(lines))));

    /// <summary>RFC 5545 3.3.6 (from the rule): days of a DURATION are days of the calendar, hours are exact; over the clock change of 29 March 2026 they differ by one hour.</summary>
    [Theory]
    [InlineData("DTSTART;TZID=Europe/London:20260328T120000|DURATION:P1D", "2026-03-28T12:00:00Z 2026-03-29T11:00:00Z")]
    [InlineData("DTSTART;TZID=Europe/London:20260328T120000|DURATION:PT24H", "2026-03-28T12:00:00Z 2026-03-29T12:00:00Z")]
    [InlineData("DTSTART:20260601T000000Z|DURATION:P15DT5H0M20S", "2026-06-01T00:00:00Z 2026-06-16T05:00:20Z")]
    [InlineData("DTSTART:20260601T000000Z|DURATION:P7W", "2026-06-01T00:00:00Z 2026-07-20T00:00:00Z")]
    public void Days_are_days_and_hours_are_hours(string lines, string expected) => Assert.Equal(expected, Times(Read(Event(lines))));

    [Fact]
    public void A_row_is_unrolled_in_its_zone_without_what_was_taken_out_and_with_what_was_moved()
    {
        var file = Read(
            Event("DTSTART;TZID=Europe/London:20261018T013000|DTEND;TZID=Europe/London:20261018T023000|RRULE:FREQ=WEEKLY;COUNT=4|EXDATE;TZID=Europe/London:20261101T013000"),
            Event("RECURRENCE-ID;TZID=Europe/London:20261108T013000|DTSTART;TZID=Europe/London:20261109T100000|DTEND;TZID=Europe/London:20261109T110000"));

        Assert.Equal("2026-10-18T00:30:00Z 2026-10-18T01:30:00Z|2026-10-25T00:30:00Z 2026-10-25T01:30:00Z|2026-11-09T10:00:00Z 2026-11-09T11:00:00Z", Times(file));
        Assert.Equal(1, file.Events);
    }

    [Fact]
    public void A_row_without_an_end_stops_after_a_year_and_a_half()
    {
        var file = Read(Event("DTSTART:20200106T090000Z|DTEND:20200106T100000Z|RRULE:FREQ=WEEKLY"));

        Assert.Equal(Instant.FromUtc(2026, 3, 2, 9, 0), file.Times[0].Start);
        Assert.InRange(file.Times[^1].Start, Instant.FromUtc(2027, 8, 25, 0, 0), Instant.FromUtc(2027, 9, 2, 9, 0));
        Assert.Equal(79, file.Times.Count);
    }

    [Fact]
    public void What_is_free_cancelled_over_or_without_length_takes_no_time_and_is_counted()
    {
        var file = Read(
            Event("DTSTART:20260601T090000Z|DTEND:20260601T100000Z"),
            Event("DTSTART:20260602T090000Z|DTEND:20260602T100000Z|TRANSP:TRANSPARENT", "b"),
            Event("DTSTART:20260603T090000Z|DTEND:20260603T100000Z|STATUS:CANCELLED", "c"),
            Event("DTSTART:20250603T090000Z|DTEND:20250603T100000Z", "d"),
            Event("DTSTART:20260604T090000Z", "e"),
            Event("DTSTART;TZID=Nowhere/Land:20260604T090000|DURATION:PT1H", "f"),
            Event("DTSTART:20261399T090000Z|DURATION:PT1H", "g"),
            Event("SUMMARY:no start", "h"),
            Event("DTSTART:20200101T000000Z|DURATION:PT1S|RRULE:FREQ=SECONDLY", "i"),
            Event("DTSTART:20260604T090000Z|DURATION:PT1H|RRULE:FREQ=SOMETIMES", "j"));

        Assert.Equal("2026-06-01T09:00:00Z 2026-06-01T10:00:00Z", Times(file));
        Assert.Equal(["1 marked as free in that calendar", "1 cancelled", "1 over already or more than a year and a half ahead", "1 without a length", "1 repeated more often than a day has hours", "1 in a time zone this program does not know", "3 not readable"], file.Skipped.Select(s => $"{s.Count} {s.Why}"));
    }

    [Fact]
    public void One_of_a_row_that_is_called_off_is_free()
    {
        var file = Read(
            Event("DTSTART:20260601T090000Z|DTEND:20260601T100000Z|RRULE:FREQ=DAILY;COUNT=3"),
            Event("RECURRENCE-ID:20260602T090000Z|DTSTART:20260602T090000Z|DTEND:20260602T100000Z|STATUS:CANCELLED"));

        Assert.Equal("2026-06-01T09:00:00Z 2026-06-01T10:00:00Z|2026-06-03T09:00:00Z 2026-06-03T10:00:00Z", Times(file));
    }

    [Fact]
    public void Times_that_touch_or_overlap_are_one()
    {
        var file = Read(Event("DTSTART:20260601T090000Z|DTEND:20260601T100000Z"), Event("DTSTART:20260601T100000Z|DTEND:20260601T110000Z", "b"), Event("DTSTART:20260601T093000Z|DTEND:20260601T094500Z", "c"));

        Assert.Equal(("2026-06-01T09:00:00Z 2026-06-01T11:00:00Z", 3), (Times(file), file.Events));
    }

    /// <summary>A rule that never comes (30 February) and one that was begun long ago are both read at once.</summary>
    [Theory]
    [InlineData("DTSTART:20260130T090000Z|DURATION:PT1H|RRULE:FREQ=MONTHLY;BYMONTH=2;BYMONTHDAY=30")]
    [InlineData("DTSTART:00010101T090000Z|DURATION:PT1H|RRULE:FREQ=DAILY;COUNT=5")]
    [InlineData("DTSTART:20260601T090000Z|DURATION:PT1H|RRULE:FREQ=DAILY;BYHOUR=0,1,2,3,4;BYMINUTE=0,1,2,3,4;BYSECOND=0,1,2,3")]
    public void What_nobody_can_keep_is_left_out(string lines)
    {
        var file = Read(Event(lines));

        Assert.Empty(file.Times);
        Assert.Single(file.Skipped);
    }

    [Theory]
    [InlineData("")]
    [InlineData("hello")]
    [InlineData("Date,Club\n2026-01-01,Driver\n")]
    [InlineData("BEGIN:VCARD\r\nEND:VCARD\r\n")]
    public void What_is_no_calendar_is_refused_by_what_is_in_it(string text) => Assert.Equal("busy-not-calendar", BusyReader.Read(text, London, Now).Refusals.Single().Code);

    [Fact]
    public void Too_many_times_are_no_calendar_of_a_person()
    {
        var days = string.Concat(Enumerable.Range(0, 25).Select(n => Event($"DTSTART:20260601T{n % 24:00}{n / 24:00}00Z|DURATION:PT10M|RRULE:FREQ=DAILY", $"u{n}")));

        Assert.Equal("busy-too-many", BusyReader.Read(Calendar(days), London, Now).Refusals.Single().Code);
    }

    /// <summary>Folded lines (RFC 5545 3.1), a mark before the first line, line ends of other machines, two calendars in one file.</summary>
    [Fact]
    public void Files_as_programs_write_them_are_read()
    {
        var one = Calendar(Event("DTSTART;TZID=Europe\r\n /London:20260601T090000|DURATION:PT1H|DESCRIPTION:BEGIN:VEVENT is only a word here"));
        var two = Calendar(Event("DTSTART:20260701T090000Z|DURATION:PT1H", "b"));

        var file = BusyReader.Read("\uFEFF" + (one + two).Replace("\r\n", "\n", StringComparison.Ordinal), London, Now).Value;

        Assert.Equal("2026-06-01T08:00:00Z 2026-06-01T09:00:00Z|2026-07-01T09:00:00Z 2026-07-01T10:00:00Z", Times(file));
    }

    private static BusyFile Read(params string[] events)
    {
        var read = BusyReader.Read(Calendar(string.Concat(events)), London, Now);
        Assert.True(read.Succeeded);
        return read.Value;
    }

    private static string Calendar(string events) => $"BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Test//Test//EN\r\n{events}END:VCALENDAR\r\n";

    private static string Event(string lines, string uid = "a") => $"BEGIN:VEVENT\r\nUID:{uid}\r\nDTSTAMP:20260101T000000Z\r\n{lines.Replace("|", "\r\n", StringComparison.Ordinal)}\r\nEND:VEVENT\r\n";

    private static string Times(BusyFile file) => string.Join('|', file.Times.Select(t => $"{InstantPattern.General.Format(t.Start)} {InstantPattern.General.Format(t.End)}"));
}
