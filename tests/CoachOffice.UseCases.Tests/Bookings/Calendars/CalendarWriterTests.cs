using System.Text;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Bookings.Calendars;
using Ical.Net;
using Ical.Net.CalendarComponents;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Bookings.Calendars;

public sealed class CalendarWriterTests
{
    private static readonly Instant Now = Instant.FromUtc(2026, 3, 2, 9, 0);

    [Fact]
    public void A_booking_is_one_event_with_its_zones_rules_beside_it()
    {
        var lines = Lines(CalendarWriter.Published("Carl Coach", [Lesson()], Now));

        Assert.Equal(["BEGIN:VCALENDAR", "END:VCALENDAR"], [lines[0], lines[^1]]);
        Assert.Contains("VERSION:2.0", lines);
        Assert.Contains("PRODID:-//CoachOffice//Bookings//EN", lines);
        Assert.Contains("BEGIN:VTIMEZONE", lines);
        Assert.Contains("TZID:Europe/London", lines);
        Assert.Contains("DTSTART;TZID=Europe/London:20261011T090000", lines);
        Assert.Contains("DURATION:PT60M", lines);
        Assert.Contains("DTSTAMP:20260302T090000Z", lines);
        Assert.Contains("UID:booking-1@golf.example", lines);
        Assert.Contains("SEQUENCE:0", lines);
        Assert.Contains("STATUS:CONFIRMED", lines);
        Assert.DoesNotContain(lines, l => l.StartsWith("ATTENDEE", StringComparison.Ordinal) || l.StartsWith("ORGANIZER", StringComparison.Ordinal));
    }

    /// <summary>RFC 5545 3.1: lines end in CRLF, hold at most 75 octets, and are never cut inside a character (a value of 40 "é" folds between two of them).</summary>
    [Fact]
    public void Long_lines_are_folded_between_characters()
    {
        var text = CalendarWriter.Published("x", [Lesson() with { Location = new string('é', 40), Summary = new string('a', 300) }], Now);

        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.All(text.Split("\r\n"), line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 0, 75));
        Assert.DoesNotContain('\uFFFD', text);
        Assert.Contains($"LOCATION:{new string('é', 40)}", Lines(text));
        Assert.Contains($"SUMMARY:{new string('a', 200)}", Lines(text));
    }

    /// <summary>RFC 5545 3.1, derived: a line of exactly 75 octets stays whole, one of 76 becomes 75 and 1 behind a space.</summary>
    [Theory]
    [InlineData(75 - 8, 1)]
    [InlineData(76 - 8, 2)]
    public void The_seventy_sixth_octet_goes_to_the_next_line(int length, int lines)
    {
        var text = CalendarWriter.Published("x", [Lesson() with { Summary = new string('a', length) }], Now).Split("\r\n").ToList();

        var at = text.FindIndex(l => l.StartsWith("SUMMARY:", StringComparison.Ordinal));
        Assert.Equal(75, Encoding.UTF8.GetByteCount(text[at]));
        Assert.Equal(lines == 2, text[at + 1] == " a");
    }

    /// <summary>RFC 5545 3.3.11: backslash, semicolon and comma are escaped, a new line is \n, a colon is not escaped. The words are the standard's example.</summary>
    [Fact]
    public void Text_is_escaped()
    {
        var text = CalendarWriter.Published("x", [Lesson() with { Description = "Project XYZ Final Review\nConference Room - 3B\nCome Prepared.", Summary = "a;b,c\\d: e" }], Now);

        Assert.Contains(@"DESCRIPTION:Project XYZ Final Review\nConference Room - 3B\nCome Prepared.", Lines(text));
        Assert.Contains(@"SUMMARY:a\;b\,c\\d: e", Lines(text));
        Assert.Equal("a;b,c\\d: e", Calendar.Load(text)!.Events.Single().Summary);
    }

    /// <summary>A name of a person adds no line of its own.</summary>
    [Theory]
    [InlineData("Al\r\nATTENDEE:mailto:all@example.org")]
    [InlineData("Al\nEND:VEVENT")]
    [InlineData("Al\u2028X-A:b")]
    [InlineData("Al\" ;DIR=\"x")]
    public void A_name_stays_a_name(string name)
    {
        var people = new CalendarPeople(name, "office@golf.example", new MailRecipient(name, "alma@example.org", false));

        var lines = Lines(CalendarWriter.Sent("REQUEST", people, [Lesson() with { Summary = name, Location = name, Description = name.Replace('\n', ' ') }], Now));

        Assert.Single(lines, l => l.StartsWith("ATTENDEE", StringComparison.Ordinal));
        Assert.Single(lines, l => l == "END:VEVENT");
        Assert.DoesNotContain(lines, l => l.StartsWith("X-A", StringComparison.Ordinal));
        Assert.Equal("mailto:alma@example.org", Calendar.Load(string.Join("\r\n", lines))!.Events.Single().Attendees.Single().Value!.ToString());
    }

    [Fact]
    public void By_mail_it_names_who_invites_and_who_reads_and_nobody_else()
    {
        var people = new CalendarPeople("Harbour Road", "office@golf.example", new MailRecipient("Alma Reed", "alma@example.org", false));

        var lines = Lines(CalendarWriter.Sent("REQUEST", people, [Lesson()], Now));

        Assert.Contains("METHOD:REQUEST", lines);
        Assert.Contains("ORGANIZER;CN=Harbour Road:mailto:office@golf.example", lines);
        var attendee = Assert.Single(lines, l => l.StartsWith("ATTENDEE", StringComparison.Ordinal));
        Assert.EndsWith(":mailto:alma@example.org", attendee, StringComparison.Ordinal);
        Assert.Contains("RSVP=FALSE", attendee, StringComparison.Ordinal);
    }

    [Fact]
    public void A_row_says_its_rule_what_is_left_out_and_what_is_otherwise()
    {
        var row = Lesson() with { Uid = "series-1@golf.example", Rule = "FREQ=WEEKLY;COUNT=5", Without = [new LocalDateTime(2026, 11, 1, 9, 0)] };
        var moved = Lesson() with { Uid = "series-1@golf.example", Start = new LocalDateTime(2026, 10, 26, 11, 0), Instead = new LocalDateTime(2026, 10, 25, 9, 0), Sequence = 1 };

        var text = CalendarWriter.Published("x", [row, moved], Now);

        Assert.Contains("RRULE:FREQ=WEEKLY;COUNT=5", Lines(text));
        Assert.Contains("EXDATE;TZID=Europe/London:20261101T090000", Lines(text));
        Assert.Contains("RECURRENCE-ID;TZID=Europe/London:20261025T090000", Lines(text));
        Assert.Equal(
            [Utc(10, 11, 8), Utc(10, 18, 8), Utc(10, 26, 11), Utc(11, 8, 9)],
            Calendar.Load(text)!.GetOccurrences<CalendarEvent>().Select(o => Instant.FromDateTimeUtc(o.Period.StartTime.AsUtc)));
    }

    private static Instant Utc(int month, int day, int hour) => Instant.FromUtc(2026, month, day, hour, 0);

    private static CalendarEntry Lesson() => new()
    {
        Uid = "booking-1@golf.example",
        Start = new LocalDateTime(2026, 10, 11, 9, 0),
        Zone = "Europe/London",
        Minutes = 60,
        Summary = "Private hour with Carl Coach",
        Location = "Harbour Road range, Bay 1",
        Sequence = 0,
    };

    /// <summary>Unfolded content lines (RFC 5545 3.1).</summary>
    private static List<string> Lines(string text) => [.. text.Replace("\r\n ", "", StringComparison.Ordinal).Split("\r\n", StringSplitOptions.RemoveEmptyEntries)];
}
