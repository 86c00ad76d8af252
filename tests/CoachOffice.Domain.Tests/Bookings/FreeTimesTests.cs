using CoachOffice.Domain.Bookings;
using NodaTime;

namespace CoachOffice.Domain.Tests.Bookings;

public sealed class FreeTimesTests
{
    private static readonly Diary Morning = new() { Open = [new(Hours.Coach, Hours.Range, Span("09:00", "12:00"))] };

    [Fact]
    public void Times_lie_within_the_hours_at_multiples_of_the_step() =>
        Assert.Equal(["09:00", "09:30", "10:00", "10:30", "11:00"], Free(Morning, step: 30));

    [Fact]
    public void Hours_that_begin_odd_give_starts_of_the_local_hour() =>
        Assert.Equal(["09:15", "09:30", "09:45", "10:00"], Free(Morning with { Open = [new(Hours.Coach, Hours.Range, Span("09:05", "11:00"))] }, step: 15));

    [Fact]
    public void A_lesson_may_begin_where_another_ends_and_end_where_another_begins() =>
        Assert.Equal(["09:00", "11:00"], Free(Morning with { Taken = [new(Hours.Coach, Hours.Range, Span("10:00", "11:00"))] }, step: 30));

    [Fact]
    public void The_buffer_keeps_the_next_lesson_off_and_may_reach_beyond_the_hours() =>
        Assert.Equal(["11:00"], Free(Morning with { Taken = [new(Hours.Coach, Hours.Range, Span("10:00", "11:00"))] }, step: 30, buffer: 15));

    [Fact]
    public void The_way_from_and_to_another_place_is_kept_free() =>
        Assert.Equal(["09:00", "09:15", "11:45"], Free(
            new Diary
            {
                Open = [new(Hours.Coach, Hours.Range, Span("09:00", "12:45"))],
                Taken = [new(Hours.Coach, Hours.Course, Span("10:45", "11:15"))],
                Ways = [Travel.Between(FixedIds.Of(90), Hours.Course, Hours.Range, 30)],
            },
            step: 15));

    [Fact]
    public void A_busy_time_of_a_calendar_has_no_way() =>
        Assert.Equal(["09:00", "11:00"], Free(
            Morning with { Taken = [new(Hours.Coach, null, Span("10:00", "11:00"))], Ways = [Travel.Between(FixedIds.Of(90), Hours.Course, Hours.Range, 30)] }, step: 30));

    [Fact]
    public void A_lesson_needs_one_free_bay_for_all_of_its_time() =>
        Assert.Equal(["09:00", "10:30", "11:00"], Free(Morning with { Bays = [new(Hours.Range, [Span("09:00", "10:30")]), new(Hours.Range, [Span("10:00", "12:00")])] }, step: 30));

    [Fact]
    public void A_place_without_a_bay_has_no_time_for_a_lesson_that_needs_one() =>
        Assert.Empty(Free(Morning with { Bays = [new(Hours.Course, [])] }, step: 30));

    [Fact]
    public void Another_lesson_of_the_student_stands_in_the_way_without_the_buffer() =>
        Assert.Equal(["09:00", "11:00"], Free(Morning with { Student = [Span("10:00", "11:00")] }, step: 30, buffer: 60));

    [Fact]
    public void Starts_are_within_what_the_terms_allow() =>
        Assert.Equal(["09:45", "10:00"], FreeTimes.In(Morning, Wish(15) with { Starts = Span("09:40", "10:15") }).Select(t => t.LocalStart.ToString("HH:mm", null)));

    /// <summary>Europe/London goes back from 02:00 to 01:00 on 25 October 2026 (IANA): the hour that comes twice is offered once, as a booking means the first.</summary>
    [Fact]
    public void An_hour_that_comes_twice_is_offered_once()
    {
        var night = new Interval(Instant.FromUtc(2026, 10, 24, 23, 30), Instant.FromUtc(2026, 10, 25, 3, 0));

        var times = FreeTimes.In(new Diary { Open = [new(Hours.Coach, Hours.Range, night)] }, Wish(30) with { Starts = night });

        Assert.Equal(["00:30", "01:00", "01:30", "02:00"], times.Select(t => t.LocalStart.ToString("HH:mm", null)));
        Assert.All(times, t => Assert.Equal(t.Starts, LocalTimes.At(t.LocalStart, Hours.London)));
    }

    private static IReadOnlyList<string> Free(Diary diary, int step, int buffer = 0) =>
        [.. FreeTimes.In(diary, Wish(step) with { BufferMinutes = buffer }).Select(t => t.LocalStart.ToString("HH:mm", null))];

    private static FreeTimeWish Wish(int step) => new(60, 0, step, Span("00:00", "23:55"), Hours.London);

    private static Interval Span(string from, string until) =>
        new(LocalTimes.At(Hours.Local($"2026-03-02 {from}"), Hours.London), LocalTimes.At(Hours.Local($"2026-03-02 {until}"), Hours.London));
}
