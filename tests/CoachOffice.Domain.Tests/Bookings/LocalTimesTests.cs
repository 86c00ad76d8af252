using CoachOffice.Domain.Bookings;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.Domain.Tests.Bookings;

/// <summary>
/// Which instant a wall clock means. Taken: RFC 5545 section 3.3.5 (a time that comes twice is the first; one that does not exist is read with the offset
/// before the gap), which Noda Time's lenient resolver does too. Section 3.3.10 of the same standard also says that such instances are to be ignored; not
/// taken, for a lesson that was agreed is not dropped in silence.
/// </summary>
public sealed class LocalTimesTests
{
    /// <summary>The standard's own two examples, New York 2007.</summary>
    [Theory]
    [InlineData("2007-11-04T01:30:00", "2007-11-04T05:30:00Z")]
    [InlineData("2007-03-11T02:30:00", "2007-03-11T07:30:00Z")]
    [InlineData("1997-07-14T13:30:00", "1997-07-14T17:30:00Z")]
    [InlineData("1997-01-14T08:30:00", "1997-01-14T13:30:00Z")]
    public void As_the_standard_reads_New_York(string local, string instant) => Assert.Equal(At(instant), LocalTimes.At(Local(local), Zone("America/New_York")));

    /// <summary>Changes by the IANA tables (tzdata 2026f, worked out with another program): a time in the gap moves on by its length, one that comes twice is the first.</summary>
    [Theory]
    [InlineData("Europe/London", "2026-03-29T01:30:00", "2026-03-29T01:30:00Z")]
    [InlineData("Europe/London", "2026-10-25T01:30:00", "2026-10-25T00:30:00Z")]
    [InlineData("America/Los_Angeles", "2026-03-08T02:15:00", "2026-03-08T10:15:00Z")]
    [InlineData("America/Los_Angeles", "2026-11-01T01:15:00", "2026-11-01T08:15:00Z")]
    [InlineData("Australia/Sydney", "2026-10-04T02:30:00", "2026-10-03T16:30:00Z")]
    [InlineData("Australia/Sydney", "2026-04-05T02:30:00", "2026-04-04T15:30:00Z")]
    [InlineData("Australia/Lord_Howe", "2026-10-04T02:15:00", "2026-10-03T15:45:00Z")]
    [InlineData("Australia/Lord_Howe", "2026-04-05T01:45:00", "2026-04-04T14:45:00Z")]
    [InlineData("Pacific/Chatham", "2026-09-27T03:00:00", "2026-09-26T14:15:00Z")]
    [InlineData("America/St_Johns", "2026-11-01T01:30:00", "2026-11-01T04:00:00Z")]
    [InlineData("America/Santiago", "2026-09-06T00:30:00", "2026-09-06T04:30:00Z")]
    [InlineData("Africa/Cairo", "2026-04-24T00:30:00", "2026-04-23T22:30:00Z")]
    [InlineData("Asia/Beirut", "2026-03-29T00:00:00", "2026-03-28T22:00:00Z")]
    [InlineData("Atlantic/Azores", "2026-10-25T00:30:00", "2026-10-25T00:30:00Z")]
    [InlineData("Africa/Casablanca", "2026-03-22T02:30:00", "2026-03-22T02:30:00Z")]
    [InlineData("Pacific/Apia", "2011-12-30T12:00:00", "2011-12-30T22:00:00Z")]
    [InlineData("America/Sao_Paulo", "2026-11-01T00:30:00", "2026-11-01T03:30:00Z")]
    [InlineData("Asia/Kolkata", "2026-06-01T09:00:00", "2026-06-01T03:30:00Z")]
    [InlineData("Asia/Kathmandu", "2026-06-01T09:00:00", "2026-06-01T03:15:00Z")]
    public void As_the_zones_change_their_clocks(string zone, string local, string instant) => Assert.Equal(At(instant), LocalTimes.At(Local(local), Zone(zone)));

    /// <summary>A lesson's length is exact: on the night the clocks go back an hour ends where the clock shows its beginning again.</summary>
    [Theory]
    [InlineData("2026-10-25T01:30:00", "2026-10-25T00:30:00Z", "2026-10-25T01:30:00Z")]
    [InlineData("2026-03-29T00:30:00", "2026-03-29T00:30:00Z", "2026-03-29T01:30:00Z")]
    public void An_hour_is_an_hour(string local, string starts, string ends)
    {
        var time = new BookedTime(Local(local), "Europe/London", 60, 0);

        Assert.Equal((At(starts), At(ends)), (time.Starts, time.Ends));
    }

    private static DateTimeZone Zone(string id) => DateTimeZoneProviders.Tzdb[id];

    private static LocalDateTime Local(string text) => LocalDateTimePattern.ExtendedIso.Parse(text).Value;

    private static Instant At(string text) => InstantPattern.General.Parse(text).Value;
}
