using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Tests.Lessons;

public sealed class TakeTests
{
    private static readonly Instant Now = Instant.FromUtc(2026, 5, 4, 10, 0);
    private static readonly Instant Later = Now + Duration.FromMinutes(5);
    private readonly FixedIds _ids = new();
    private readonly Lesson _lesson = Lesson.Start(LessonId.From(FixedIds.Of(100)), StudentId.From(FixedIds.Of(101)), AccountId.From(FixedIds.Of(102)), new LessonHeading(new LocalDate(2026, 5, 4), Club.Iron), Now);

    [Fact]
    public void Readings_of_one_swing_and_view_come_from_one_take()
    {
        _lesson.Record([Taken("impact-spine-tilt", 1), Taken("head-drift", 1), Taken("impact-spine-tilt", 2), Taken("shaft-over-plane", 1) with { View = View.DownTheLine }], _ids, Now);
        Assert.Equal([(View.FaceOn, 1), (View.FaceOn, 2), (View.DownTheLine, 1)], _lesson.Takes.Select(t => (t.View, t.Swing)));
        var byTake = _lesson.Readings.GroupBy(r => r.TakeId).ToDictionary(g => g.Key, g => g.Count());
        Assert.Equal([2, 1, 1], _lesson.Takes.Select(t => byTake[t.Id]));
        Assert.All(_lesson.Takes, t => Assert.Equal((_lesson.Id, Now), (t.LessonId, t.AddedAt)));
    }

    [Fact]
    public void A_take_outlives_its_readings_and_takes_new_ones()
    {
        _lesson.Record([Taken("impact-spine-tilt", 1)], _ids, Now);
        _lesson.Record([], _ids, Now);
        _lesson.Record([Taken("head-drift", 1)], _ids, Later);
        var take = Assert.Single(_lesson.Takes);
        Assert.All(_lesson.AllReadings, r => Assert.Equal(take.Id, r.TakeId));
    }

    [Theory]
    [InlineData(null, View.FaceOn)]
    [InlineData(View.FaceOn, View.FaceOn)]
    [InlineData(View.DownTheLine, View.DownTheLine)]
    public void What_can_be_read_from_either_side_was_read_where_the_swing_was_filmed(View? filmed, View expected)
    {
        if (filmed is { } view) _lesson.Open(view, 1, _ids, Now);
        _lesson.Record([Taken("top-shoulder-turn", 1) with { View = View.Either }], _ids, Now);
        Assert.Equal(expected, _lesson.Takes.Single(t => t.Id == _lesson.Readings.Single().TakeId).View);
    }

    [Fact]
    public void A_take_learns_its_frame_rate_from_the_first_video_reading_that_says_one()
    {
        _lesson.Record([Taken("impact-spine-tilt", 1) with { Instrument = Instrument.Eye, FrameRate = 30 }, Taken("head-drift", 1) with { FrameRate = 240 }], _ids, Now);
        Assert.Equal(240, Assert.Single(_lesson.Takes).FrameRate);
    }

    [Fact]
    public void Another_frame_rate_is_another_error_so_its_video_readings_are_kept_anew()
    {
        _lesson.Record([Taken("impact-spine-tilt", 1), Taken("impact-spine-tilt", 2), Taken("head-drift", 1) with { Instrument = Instrument.Eye }], _ids, Now);
        _lesson.RunsAt(_lesson.Takes[0], new FramesPerSecond(240), _ids, Later);
        Assert.Equal(240, _lesson.Takes[0].FrameRate);
        Assert.Equal([("impact-spine-tilt", 1, 240.0, Later), ("impact-spine-tilt", 2, null, Now), ("head-drift", 1, null, Now)], _lesson.Readings.OrderByDescending(r => r.Measure.Value).ThenBy(r => r.Swing).Select(r => (r.Measure.Value, r.Swing, r.FrameRate, r.EnteredAt)));
        Assert.Equal([Later], _lesson.AllReadings.Where(r => r.WithdrawnAt is not null).Select(r => r.WithdrawnAt!.Value));
    }

    [Fact]
    public void A_take_is_seen_from_one_side_and_counts_from_one()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => _lesson.Open(View.Either, 1, _ids, Now));
        Assert.Throws<ArgumentOutOfRangeException>(() => _lesson.Open(View.FaceOn, 0, _ids, Now));
    }

    private static TakenReading Taken(string measure, int swing) => new() { Measure = MeasureId.From(measure), Value = new Quantity(14, Unit.Degree), Swing = swing, Instrument = Instrument.Video, View = View.FaceOn };
}
