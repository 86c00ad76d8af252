using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Tests.Measuring;

public sealed class LessonGradingTests
{
    private static readonly Measure Back = Lessons.Tempo with { Id = MeasureId.From("backswing-time"), Unit = Unit.Second, Derived = null, SetupError = .02, SwingError = .05, Row = 7 };
    private static readonly Measure Down = Back with { Id = MeasureId.From("downswing-time"), Row = 8 };
    private static readonly Domain.Plans.Rulebook Book = Lessons.BookOf([Lessons.Tempo, Back, Down, Lessons.Head, Lessons.HeadBack, Lessons.Drift]);

    [Fact]
    public void Findings_come_by_the_rows_of_the_book()
    {
        var findings = Grade(Lessons.Value(Lessons.HeadBack, -3), Lessons.Value(Down, .25), Lessons.Value(Lessons.Head, 4), Lessons.Value(Back, .75));
        Assert.Equal(
            ["tempo-ratio", "backswing-time", "downswing-time", "downswing-head-shift", "backswing-head-shift", "head-drift"],
            findings.Select(f => f.Measure.Id.Value));
    }

    [Fact]
    public void A_measure_the_book_does_not_know_is_a_defect() => Assert.Throws<ArgumentException>(() => Grade(Lessons.Value(Lessons.Tilt, 20)));

    [Fact]
    public void A_tempo_is_the_first_time_over_the_second()
    {
        var tempo = Grade(Lessons.Value(Back, .75, 4), Lessons.Value(Down, .25, 2))[0];
        Assert.Equal((3.0, Unit.Ratio, 2, true), (tempo.Value.Value, tempo.Value.Unit, tempo.Readings, tempo.IsDerived));
    }

    [Fact]
    public void A_tempo_does_not_carry_the_errors_of_its_times_but_its_own()
    {
        // .1 set-up and .35 a swing over two swings, no frame rate known.
        var tempo = Grade(Lessons.Value(Back, .75, 4), Lessons.Value(Down, .25, 2))[0];
        Assert.Equal(Math.Sqrt((.1 * .1) + (.35 * .35 / 2)), tempo.StandardError, 12);
    }

    [Fact]
    public void From_video_it_errs_by_the_frames_of_its_own_downswing()
    {
        // Own arithmetic: R 3, D .25, B .75, f 60: 2 * 3/60 * sqrt((1/.75^2 + (1/.75 + 1/.25)^2 + 1/.25^2)/12).
        var frames = .1 * Math.Sqrt(((1 / (.75 * .75)) + Math.Pow((1 / .75) + 4, 2) + 16) / 12);
        var tempo = Grade(Lessons.Value(Back, .75) with { FrameRate = 60 }, Lessons.Value(Down, .25) with { FrameRate = 120 })[0];
        Assert.Equal(Math.Sqrt((.1 * .1) + (frames * frames) + (.35 * .35)), tempo.StandardError, 12);
    }

    [Fact]
    public void A_ratio_of_anything_but_times_takes_a_usual_downswing()
    {
        var ratio = Lessons.Tempo with { Derived = new Derivation(DerivationKind.Ratio, [Lessons.Head.Id, Lessons.HeadBack.Id]) };
        var finding = LessonGrading.Grade(
            Lessons.BookOf([ratio, Lessons.Head, Lessons.HeadBack]),
            Lessons.Of(Lessons.Adult, Lessons.Value(Lessons.Head, 6) with { FrameRate = 60 }, Lessons.Value(Lessons.HeadBack, 2) with { FrameRate = 60 }))[0];
        var usual = ReadingError.Of(ratio, Lessons.Value(ratio, 3) with { FrameRate = 60 });
        Assert.Equal((3.0, usual.OfMean(1).Value), (finding.Value.Value, finding.StandardError));
    }

    [Fact]
    public void Nothing_is_divided_by_nothing() => Assert.DoesNotContain(Grade(Lessons.Value(Back, .75), Lessons.Value(Down, 0)), f => f.Measure.Id == Lessons.Tempo.Id);

    [Fact]
    public void A_sum_may_have_a_part_of_nothing() =>
        Assert.Equal(4, Grade(Lessons.Value(Lessons.Head, 0), Lessons.Value(Lessons.HeadBack, 4)).Single(f => f.Measure.Id == Lessons.Drift.Id).Value.Value);

    [Fact]
    public void What_misses_a_part_is_not_derived() => Assert.Equal([Lessons.Head.Id], Grade(Lessons.Value(Lessons.Head, 4)).Select(f => f.Measure.Id));

    [Fact]
    public void What_was_read_itself_is_not_derived()
    {
        var findings = Grade(Lessons.Value(Lessons.Head, 4), Lessons.Value(Lessons.HeadBack, 4), Lessons.Value(Lessons.Drift, 5));
        Assert.Equal((5.0, false), findings.Single(f => f.Measure.Id == Lessons.Drift.Id) is { } f ? (f.Value.Value, f.IsDerived) : default);
    }

    [Fact]
    public void Parts_in_other_units_are_added_in_the_books_own()
    {
        var inches = new MeasuredValue { Measure = Lessons.Head.Id, Value = new Quantity(1, Unit.Inch) };
        Assert.Equal(6.54, Grade(inches, Lessons.Value(Lessons.HeadBack, 4)).Single(f => f.Measure.Id == Lessons.Drift.Id).Value.Value);
    }

    [Theory]
    [InlineData(Instrument.Eye, Instrument.Video, 2)]
    [InlineData(Instrument.Video, Instrument.Eye, 2)]
    [InlineData(Instrument.Video, Instrument.Video, 1)]
    public void A_tempo_with_one_part_read_by_eye_errs_like_an_eye(Instrument back, Instrument down, double factor)
    {
        var tempo = Grade(Lessons.Value(Back, .75) with { Instrument = back }, Lessons.Value(Down, .25) with { Instrument = down })[0];
        Assert.Equal(factor * Math.Sqrt((.1 * .1) + (.35 * .35)), tempo.StandardError, 12);
    }

    private static IReadOnlyList<Finding> Grade(params MeasuredValue[] readings) => LessonGrading.Grade(Book, Lessons.Of(Lessons.Adult, readings));
}
