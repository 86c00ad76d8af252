using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Tests.Measuring;

public sealed class ReadingErrorTests
{
    private static readonly Measure Time = Lessons.Tempo with { Id = MeasureId.From("downswing-time"), Unit = Unit.Second, Derived = null, SetupError = .02, SwingError = .05 };

    [Theory]
    [InlineData(Instrument.Video, 1.5, 2.5)]
    [InlineData(Instrument.Radar, 1.5, 2.5)]
    [InlineData(Instrument.Eye, 3, 5)]
    public void An_eye_doubles_both_parts(Instrument instrument, double setup, double swing)
    {
        var error = ReadingError.Of(Lessons.Tilt, Lessons.Value(Lessons.Tilt, 20) with { Instrument = instrument });
        Assert.Equal(new ReadingError(Unit.Degree, setup, swing), error);
    }

    [Theory]
    [InlineData(1, 2.915475947)]
    [InlineData(5, 1.870828693)]
    public void More_swings_shrink_only_the_scatter_of_a_swing(int readings, double expected) =>
        Assert.Equal(expected, new ReadingError(Unit.Degree, 1.5, 2.5).OfMean(readings).Value, 9);

    [Fact]
    public void A_mean_is_of_one_swing_at_least() => Assert.Throws<ArgumentOutOfRangeException>(() => new ReadingError(Unit.Degree, 1.5, 2.5).OfMean(0));

    [Fact]
    public void Errors_of_a_sum_add_like_the_sides_of_a_right_triangle() =>
        Assert.Equal(new ReadingError(Unit.Centimetre, 5, 13), ReadingError.OfSum([new(Unit.Centimetre, 3, 5), new(Unit.Centimetre, 4, 12)]));

    [Theory]
    [InlineData(60.0, Instrument.Video, 1)]
    [InlineData(60.0, Instrument.Eye, 2)]
    public void A_time_from_video_errs_by_its_frames(double rate, Instrument instrument, double factor)
    {
        // Two frames, each picked by a person: 2 * sqrt(2) / 60 / sqrt(12).
        var error = ReadingError.Of(Time, Lessons.Value(Time, .27) with { FrameRate = rate, Instrument = instrument });
        Assert.Equal(factor * .0136082763, error.Setup, 9);
        Assert.Equal(factor * .05, error.Swing, 9);
    }

    [Theory]
    [InlineData(null)]
    [InlineData(0.0)]
    [InlineData(-1.0)]
    public void Without_a_frame_rate_it_errs_as_usual(double? rate) => Assert.Equal(.02, ReadingError.Of(Time, Lessons.Value(Time, .27) with { FrameRate = rate }).Setup);

    [Fact]
    public void A_time_that_no_video_takes_has_no_frames() =>
        Assert.Equal(.02, ReadingError.Of(Time with { Instruments = [Instrument.Sensor] }, Lessons.Value(Time, .27) with { FrameRate = 60 }).Setup);

    [Fact]
    public void An_angle_does_not_err_by_its_frames() =>
        Assert.Equal(1.5, ReadingError.Of(Lessons.Tilt, Lessons.Value(Lessons.Tilt, 20) with { FrameRate = 60 }).Setup);

    [Theory]
    [InlineData(0)]
    [InlineData(-3)]
    public void A_tempo_that_cannot_be_has_no_frames_either(double tempo) =>
        Assert.Equal(.1, ReadingError.Of(Lessons.Tempo, Lessons.Value(Lessons.Tempo, tempo) with { FrameRate = 30 }).Setup, 12);

    [Fact]
    public void A_sum_does_not_err_by_its_frames() =>
        Assert.Equal(.8, ReadingError.Of(Lessons.Drift, Lessons.Value(Lessons.Drift, 3) with { FrameRate = 30 }).Setup, 12);
}
