using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.Domain.Tests.Lessons;

public sealed class LessonValuesTests
{
    private static readonly MeasureId Tilt = MeasureId.From("impact-spine-tilt");
    private static readonly MeasureId Drift = MeasureId.From("head-drift");

    [Fact]
    public void Each_measure_becomes_the_mean_of_its_swings_in_its_own_unit()
    {
        var values = LessonValues.Of([Read(Tilt, 14, 1), Read(Tilt, 17, 2), Read(Drift, 4, 1)], m => m == Tilt ? Unit.Degree : Unit.Centimetre);
        Assert.Equal([(Drift, 4.0, Unit.Centimetre, 1), (Tilt, 15.5, Unit.Degree, 2)], values.Select(v => (v.Measure, v.Value.Value, v.Value.Unit, v.Readings)));
    }

    [Fact]
    public void The_same_swing_read_twice_is_one_swing() =>
        Assert.Equal(2, Assert.Single(LessonValues.Of([Read(Tilt, 14, 1), Read(Tilt, 14, 1), Read(Tilt, 14, 2)], _ => Unit.Degree)).Readings);

    [Fact]
    public void The_coarsest_instrument_and_the_slowest_video_speak_for_all()
    {
        var value = Assert.Single(LessonValues.Of([Read(Tilt, 14, 1, Instrument.Video, 240), Read(Tilt, 14, 2, Instrument.Eye, 60), Read(Tilt, 14, 3, Instrument.Video, 120)], _ => Unit.Degree));
        Assert.Equal((Instrument.Eye, 60.0), (value.Instrument, value.FrameRate));
    }

    private static Reading Read(MeasureId measure, double value, int swing, Instrument instrument = Instrument.Video, double? frameRate = null) =>
        Reading.Take(
            FixedIds.Of(swing),
            Take.Of(TakeId.From(FixedIds.Of(200)), LessonId.From(FixedIds.Of(100)), View.FaceOn, swing, Instant.FromUtc(2026, 5, 4, 10, 0)),
            new TakenReading { Measure = measure, Value = new Quantity(value, Unit.Degree), Swing = swing, Instrument = instrument, FrameRate = frameRate },
            Instant.FromUtc(2026, 5, 4, 10, 0));
}
