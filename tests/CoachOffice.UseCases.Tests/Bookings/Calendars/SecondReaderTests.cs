using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Bookings.Calendars;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.UseCases.Tests.Bookings.Calendars;

/// <summary>What we write means the same to a program of other people.</summary>
public sealed class SecondReaderTests
{
    private static readonly Instant Now = Instant.FromUtc(2026, 3, 2, 9, 0);

    [Fact]
    public async Task A_row_across_a_clock_change_with_one_moved_and_one_called_off()
    {
        var row = Lesson(new LocalDateTime(2026, 10, 11, 9, 0)) with { Rule = "FREQ=WEEKLY;COUNT=5", Without = [new LocalDateTime(2026, 11, 1, 9, 0)] };
        var moved = Lesson(new LocalDateTime(2026, 10, 26, 11, 0)) with { Instead = new LocalDateTime(2026, 10, 25, 9, 0), Sequence = 1, Minutes = 90, Summary = "Längere Stunde; mit Übung, ja" };

        var read = await SecondReader.Read(CalendarWriter.Published("Carl", [row, moved], Now));

        Assert.Equal(["2026-10-11T08:00:00Z", "2026-10-18T08:00:00Z", "2026-10-26T11:00:00Z", "2026-11-08T09:00:00Z"], read.Events.Select(e => e.Start));
        Assert.Equal([60, 60, 90, 60], read.Events.Select(e => e.Minutes));
        Assert.Equal(new SeenEvent("2026-10-26T11:00:00Z", 90, "Längere Stunde; mit Übung, ja", "CONFIRMED", 1, "Harbour Road range, Bay 1"), read.Events[2]);
        Assert.Equal(("2.0", "PUBLISH"), (read.Head["VERSION"], read.Head["METHOD"]));
        Assert.Empty(read.People);
    }

    [Theory]
    [InlineData("FREQ=WEEKLY;COUNT=30")]
    [InlineData("FREQ=WEEKLY;INTERVAL=2;BYDAY=TU,TH;COUNT=25")]
    [InlineData("FREQ=MONTHLY;BYDAY=-1SU;COUNT=14")]
    [InlineData("FREQ=WEEKLY;UNTIL=20270401T080000Z")]
    public async Task Both_readers_find_the_same_starts(string rule)
    {
        var start = new LocalDateTime(2026, 9, 1, 9, 0);
        var zone = DateTimeZoneProviders.Tzdb["Europe/London"];

        var read = await SecondReader.Read(CalendarWriter.Published("Carl", [Lesson(start) with { Rule = rule }], Now));

        Assert.Equal(RuleDates.Of(rule, start, "Europe/London").Select(s => InstantPattern.General.Format(s.InZoneStrictly(zone).ToInstant())), read.Events.Select(e => e.Start));
    }

    [Fact]
    public async Task An_invitation_names_the_practice_and_the_reader()
    {
        var people = new CalendarPeople("Harbour Road", "office@golf.example", new MailRecipient("Mara Marsh", "mara@example.org", true));

        var read = await SecondReader.Read(CalendarWriter.Sent("CANCEL", people, [Lesson(new LocalDateTime(2026, 10, 11, 9, 0)) with { State = EntryState.Cancelled, Sequence = 3 }], Now));

        Assert.Equal("CANCEL", read.Head["METHOD"]);
        Assert.Equal(["mailto:office@golf.example", "mailto:mara@example.org"], read.People);
        Assert.Equal(("CANCELLED", 3), (read.Events.Single().Status, read.Events.Single().Sequence));
    }

    /// <summary>Clock changes of 2026 by the IANA tables (tzdata 2026f, worked out with another program): the rules in our file give the same offsets on both sides.</summary>
    [Theory]
    [InlineData("Europe/London", "2026-03-29T01:00:00Z")]
    [InlineData("Europe/London", "2026-10-25T01:00:00Z")]
    [InlineData("Europe/London", "2027-03-28T01:00:00Z")]
    [InlineData("America/New_York", "2026-03-08T07:00:00Z")]
    [InlineData("America/New_York", "2026-11-01T06:00:00Z")]
    [InlineData("America/Los_Angeles", "2026-11-01T09:00:00Z")]
    [InlineData("Australia/Sydney", "2026-04-04T16:00:00Z")]
    [InlineData("Australia/Sydney", "2026-10-03T16:00:00Z")]
    [InlineData("Australia/Adelaide", "2026-10-03T16:30:00Z")]
    [InlineData("Australia/Lord_Howe", "2026-04-04T15:00:00Z")]
    [InlineData("Australia/Lord_Howe", "2026-10-03T15:30:00Z")]
    [InlineData("Pacific/Chatham", "2026-04-04T14:00:00Z")]
    [InlineData("Pacific/Chatham", "2026-09-26T14:00:00Z")]
    [InlineData("America/St_Johns", "2026-11-01T04:30:00Z")]
    [InlineData("America/Santiago", "2026-09-06T04:00:00Z")]
    [InlineData("Africa/Cairo", "2026-04-23T22:00:00Z")]
    [InlineData("Asia/Beirut", "2026-03-28T22:00:00Z")]
    [InlineData("Atlantic/Azores", "2026-03-29T01:00:00Z")]
    [InlineData("Africa/Casablanca", "2026-02-15T02:00:00Z")]
    [InlineData("Asia/Kolkata", "2026-06-01T00:00:00Z")]
    [InlineData("Asia/Kathmandu", "2026-06-01T00:00:00Z")]
    [InlineData("America/Phoenix", "2026-06-01T00:00:00Z")]
    [InlineData("America/Sao_Paulo", "2026-11-01T03:00:00Z")]
    public async Task The_zones_rules_in_the_file_are_the_zones(string zone, string change)
    {
        var at = InstantPattern.General.Parse(change).Value;
        Instant[] moments = [at - Duration.FromHours(3), at + Duration.FromHours(3)];
        var calendar = CalendarWriter.Published("Carl", [Lesson(new LocalDateTime(2026, 1, 15, 9, 0)) with { Zone = zone }], Now);

        var read = await SecondReader.Read(calendar, [.. moments.Select(m => $"{zone}@{m.ToUnixTimeSeconds()}")]);

        var tzdb = DateTimeZoneProviders.Tzdb[zone];
        Assert.Equal(moments.Select(m => tzdb.GetUtcOffset(m).Seconds), read.Offsets);
    }

    private static CalendarEntry Lesson(LocalDateTime start) => new()
    {
        Uid = "series-1@golf.example",
        Start = start,
        Zone = "Europe/London",
        Minutes = 60,
        Summary = "Private hour with Carl Coach",
        Location = "Harbour Road range, Bay 1",
        Sequence = 0,
    };
}
