using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.FollowUps;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.UseCases.Tests.FollowUps;

public sealed class FollowUpDatesTests
{
    /// <summary>RFC 5545 section 3.3.5, form 3: a time that occurs twice is the first, one that does not exist is read with the offset before the gap.</summary>
    [Theory]
    [InlineData("America/New_York", "2007-11-04T01:30", "2007-11-04T05:30:00Z")]
    [InlineData("America/New_York", "2007-03-11T02:30", "2007-03-11T07:30:00Z")]
    [InlineData("America/New_York", "1997-07-14T13:30", "1997-07-14T17:30:00Z")]
    [InlineData("America/New_York", "2007-01-15T08:30", "2007-01-15T13:30:00Z")]
    public void A_local_time_in_a_clock_change_is_resolved_as_the_calendar_standard_says(string zone, string local, string utc) => Resolves(zone, local, utc);

    /// <summary>Transitions of the IANA time zone data (tzdata 2026f, computed from the data with another library): half an hour after the change began, by the old clock.</summary>
    [Theory]
    [InlineData("Europe/London", "2026-03-29T01:30", "2026-03-29T01:30:00Z")]
    [InlineData("Europe/London", "2026-10-25T01:30", "2026-10-25T00:30:00Z")]
    [InlineData("America/Los_Angeles", "2026-03-08T02:30", "2026-03-08T10:30:00Z")]
    [InlineData("America/Los_Angeles", "2026-11-01T01:30", "2026-11-01T08:30:00Z")]
    [InlineData("Australia/Sydney", "2026-10-04T02:30", "2026-10-03T16:30:00Z")]
    [InlineData("Australia/Sydney", "2026-04-05T02:30", "2026-04-04T15:30:00Z")]
    [InlineData("Australia/Lord_Howe", "2026-10-04T02:15", "2026-10-03T15:45:00Z")]
    [InlineData("Australia/Lord_Howe", "2026-04-05T01:45", "2026-04-04T14:45:00Z")]
    [InlineData("Pacific/Chatham", "2026-09-27T03:00", "2026-09-26T14:15:00Z")]
    [InlineData("America/Santiago", "2026-09-06T00:30", "2026-09-06T04:30:00Z")]
    [InlineData("Africa/Cairo", "2026-04-24T00:30", "2026-04-23T22:30:00Z")]
    [InlineData("Asia/Beirut", "2026-03-29T00:30", "2026-03-28T22:30:00Z")]
    [InlineData("Asia/Kathmandu", "2026-03-29T09:00", "2026-03-29T03:15:00Z")]
    [InlineData("Pacific/Apia", "2011-12-30T09:00", "2011-12-30T19:00:00Z")]
    public void A_reminder_is_never_dropped_by_a_clock_change(string zone, string local, string utc) => Resolves(zone, local, utc);

    [Theory]
    [InlineData("2026-03-28T09:30", "2026-03-29T09:00", "the morning after, an hour less of night")]
    [InlineData("2026-03-29T08:59", "2026-03-29T09:00", "the same morning")]
    [InlineData("2026-03-29T09:00", "2026-03-29T09:00", "now is early enough")]
    public void The_next_morning_is_nine_by_the_wall_clock(string now, string expected, string because)
    {
        var dates = On("Europe/London");

        Assert.True(Local(dates, expected) == dates.NextMorning(Local(dates, now)), because);
    }

    [Theory]
    [InlineData("2026-03-02T07:59", true)]
    [InlineData("2026-03-02T08:00", false)]
    [InlineData("2026-03-02T19:59", false)]
    [InlineData("2026-03-02T20:00", true)]
    [InlineData("2026-03-02T00:00", true)]
    public void Evenings_and_nights_are_quiet(string now, bool quiet)
    {
        var dates = On("Europe/London");

        Assert.Equal(quiet, dates.IsQuiet(Local(dates, now)));
    }

    [Fact]
    public void A_retest_is_due_at_the_stages_end_when_nobody_practised_late()
    {
        var dates = On("Europe/London");

        Assert.Equal(Day("2026-03-09"), dates.RetestDay(Day("2026-03-09"), Local(dates, "2026-03-07T18:00"), []));
        Assert.Equal(Day("2026-03-09"), dates.RetestDay(Day("2026-03-09"), null, []));
    }

    [Theory]
    [InlineData("2026-03-08T08:59", "2026-03-09")]
    [InlineData("2026-03-08T09:00", "2026-03-09")]
    [InlineData("2026-03-08T09:01", "2026-03-10")]
    [InlineData("2026-03-09T18:00", "2026-03-11")]
    public void A_retest_leaves_a_whole_day_after_the_last_practice(string practised, string due)
    {
        var dates = On("Europe/London");
        var last = Local(dates, practised);

        var day = dates.RetestDay(Day("2026-03-09"), last, []);

        Assert.Equal(Day(due), day);
        Assert.True(FollowUpDates.IsRested(last, dates.Morning(day)));
    }

    [Fact]
    public void A_retest_is_never_on_a_lessons_day()
    {
        var dates = On("Europe/London");

        Assert.Equal(Day("2026-03-11"), dates.RetestDay(Day("2026-03-09"), null, [Day("2026-03-09"), Day("2026-03-10")]));
    }

    [Fact]
    public void The_second_look_lies_one_to_two_weeks_after_the_verdict_and_not_on_a_lessons_day()
    {
        var verdict = Day("2026-03-09");
        var taught = Enumerable.Range(7, 8).Select(verdict.PlusDays).ToList();

        Assert.Equal(verdict.PlusDays(10), FollowUpDates.SecondLook(verdict, []));
        foreach (var free in taught) Assert.Equal(free, FollowUpDates.SecondLook(verdict, taught.Where(d => d != free)));
    }

    [Fact]
    public void A_practice_named_for_an_earlier_day_ended_with_that_day()
    {
        var dates = On("Europe/London");
        var now = Local(dates, "2026-03-09T18:00");

        Assert.Equal(now, dates.PracticeEnd(now, Day("2026-03-09")));
        Assert.Equal(Local(dates, "2026-03-08T00:00"), dates.PracticeEnd(now, Day("2026-03-07")));
    }

    [Fact]
    public void A_pause_puts_days_off_by_its_length_and_never_forward() =>
        Assert.Equal(
            (Day("2026-03-15"), Day("2026-03-09")),
            (FollowUpDates.Postponed(Day("2026-03-09"), Day("2026-03-04"), Day("2026-03-10")), FollowUpDates.Postponed(Day("2026-03-09"), Day("2026-03-04"), Day("2026-03-04"))));

    private static void Resolves(string zone, string local, string utc)
    {
        var time = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm").Parse(local).Value;

        Assert.Equal(InstantPattern.General.Parse(utc).Value, On(zone).At(time.Date, time.TimeOfDay));
    }

    private static FollowUpDates On(string zone) => new(DateTimeZoneProviders.Tzdb[zone]);

    private static LocalDate Day(string day) => LocalDatePattern.Iso.Parse(day).Value;

    private static Instant Local(FollowUpDates dates, string local) =>
        LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm").Parse(local).Value.InZoneStrictly(dates.Zone).ToInstant();

    // Own hours and an own clock: quiet from ten in the evening until ten in the morning in New York (UTC-5 in March before the 8th, 2026).
    [Theory]
    [InlineData("2026-03-05T14:00:00Z", true, "2026-03-05T15:00:00Z")]
    [InlineData("2026-03-05T16:00:00Z", false, null)]
    [InlineData("2026-03-06T04:00:00Z", true, "2026-03-06T15:00:00Z")]
    public void A_student_may_have_hours_and_a_clock_of_their_own(string now, bool quiet, string? again)
    {
        var dates = new FollowUpDates(DateTimeZoneProviders.Tzdb["Europe/London"]).For(new ContactWishes { QuietFrom = 22, QuietUntil = 10, Zone = "America/New_York" });
        var at = InstantPattern.General.Parse(now).Value;

        Assert.Equal(quiet, dates.IsQuiet(at));
        if (again is not null) Assert.Equal(again, InstantPattern.General.Format(dates.AfterQuiet(at)));
    }

    [Fact]
    public void Quiet_hours_by_day_end_when_they_end()
    {
        var dates = new FollowUpDates(DateTimeZone.Utc).For(new ContactWishes { QuietFrom = 12, QuietUntil = 14 });

        Assert.True(dates.IsQuiet(Instant.FromUtc(2026, 3, 5, 13, 0)));
        Assert.False(dates.IsQuiet(Instant.FromUtc(2026, 3, 5, 3, 0)));
        Assert.Equal(Instant.FromUtc(2026, 3, 5, 14, 0), dates.AfterQuiet(Instant.FromUtc(2026, 3, 5, 13, 0)));
    }
}
