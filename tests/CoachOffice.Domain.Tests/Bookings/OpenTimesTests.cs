using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using NodaTime;

namespace CoachOffice.Domain.Tests.Bookings;

public sealed class OpenTimesTests
{
    [Fact]
    public void Weekly_hours_hold_on_their_weekday_while_they_are_valid() =>
        Assert.Equal(["range Mon 09:00 GMT to Mon 12:00 GMT", "course Mon 14:00 GMT to Mon 17:00 GMT"], Hours.Read(
            new([
                Hours.Weekly(IsoDayOfWeek.Monday, "09:00", "12:00", validUntil: "2026-03-02"),
                Hours.Weekly(IsoDayOfWeek.Monday, "14:00", "17:00", Hours.Course, validFrom: "2026-03-02", validUntil: "2026-03-08"),
                Hours.Weekly(IsoDayOfWeek.Monday, "18:00", "19:00", validFrom: "2026-03-17"),
            ], []), Hours.Days("2026-03-02", "2026-03-16"), Hours.London));

    [Fact]
    public void What_is_closed_for_the_coach_or_the_practice_is_taken_out() =>
        Assert.Equal(["range Mon 09:00 GMT to Mon 10:00 GMT", "range Mon 11:00 GMT to Mon 12:00 GMT", "range Tue 11:30 GMT to Tue 12:00 GMT"], Hours.Read(
            new(
                [Hours.Weekly(IsoDayOfWeek.Monday, "09:00", "12:00"), Hours.Weekly(IsoDayOfWeek.Tuesday, "09:00", "12:00")],
                [Hours.Closed("2026-03-02 10:00", "2026-03-02 11:00"), Hours.Closed("2026-03-03 00:00", "2026-03-03 11:30", practice: true)]),
            Hours.Days("2026-03-02", "2026-03-03"), Hours.London));

    [Fact]
    public void An_opening_holds_beyond_the_hours_and_while_closed_and_joins_what_it_touches() =>
        Assert.Equal(["range Mon 09:00 GMT to Mon 13:00 GMT", "course Tue 10:00 GMT to Tue 11:00 GMT"], Hours.Read(
            new(
                [Hours.Weekly(IsoDayOfWeek.Monday, "09:00", "12:00"), Hours.Weekly(IsoDayOfWeek.Tuesday, "09:00", "12:00")],
                [Hours.Opened("2026-03-02 12:00", "2026-03-02 13:00"), Hours.Closed("2026-03-03 00:00", "2026-03-04 00:00", practice: true), Hours.Opened("2026-03-03 10:00", "2026-03-03 11:00", Hours.Course)]),
            Hours.Days("2026-03-02", "2026-03-03"), Hours.London));

    [Fact]
    public void Hours_that_end_at_midnight_end_with_the_day_and_go_on_into_the_next() =>
        Assert.Equal(["range Mon 22:00 GMT to Tue 01:00 GMT"], Hours.Read(
            new([Hours.Weekly(IsoDayOfWeek.Monday, "22:00", "00:00"), Hours.Weekly(IsoDayOfWeek.Tuesday, "00:00", "01:00")], []), Hours.Days("2026-03-02", "2026-03-03"), Hours.London));

    [Fact]
    public void Another_coachs_hours_and_closed_times_do_not_count() =>
        Assert.Empty(OpenTimes.Of(AccountId.From(FixedIds.Of(2)), new([Hours.Weekly(IsoDayOfWeek.Monday, "09:00", "12:00")], [Hours.Opened("2026-03-02 12:00", "2026-03-02 13:00")]), Hours.Days("2026-03-02", "2026-03-08"), Hours.London));

    /// <summary>The changes of Europe/London and America/Santiago in 2026 are those of the IANA tables; RFC 5545 section 3.3.5 says how local times in them are read.</summary>
    [Theory]
    [InlineData("Europe/London", "2026-03-29", "00:30", "03:00", "range Sun 00:30 GMT to Sun 03:00 BST", 90)]
    [InlineData("Europe/London", "2026-03-29", "01:15", "01:45", "range Sun 02:15 BST to Sun 02:45 BST", 30)]
    [InlineData("Europe/London", "2026-10-25", "00:30", "03:00", "range Sun 00:30 BST to Sun 03:00 GMT", 210)]
    [InlineData("Europe/London", "2026-10-25", "01:15", "01:45", "range Sun 01:15 BST to Sun 01:45 BST", 30)]
    [InlineData("Europe/London", "2026-10-25", "09:00", "17:00", "range Sun 09:00 GMT to Sun 17:00 GMT", 480)]
    [InlineData("America/Santiago", "2026-09-06", "00:00", "02:00", "range Sun 01:00 -03 to Sun 02:00 -03", 60)]
    public void Clocks_that_change_leave_the_local_hours_as_they_are(string zoneId, string day, string from, string until, string read, int minutes)
    {
        var zone = DateTimeZoneProviders.Tzdb[zoneId];
        var book = new HoursBook([Hours.Weekly(IsoDayOfWeek.Sunday, from, until)], []);

        Assert.Equal([read], Hours.Read(book, Hours.Days(day, day), zone));
        Assert.Equal(Duration.FromMinutes(minutes), Assert.Single(OpenTimes.Of(Hours.Coach, book, Hours.Days(day, day), zone)).Time.Duration);
    }

    [Fact]
    public void A_time_the_clocks_jump_over_is_no_time() =>
        Assert.Empty(Hours.Read(new([Hours.Weekly(IsoDayOfWeek.Sunday, "01:30", "02:15")], []), Hours.Days("2026-03-29", "2026-03-29"), Hours.London));
}
