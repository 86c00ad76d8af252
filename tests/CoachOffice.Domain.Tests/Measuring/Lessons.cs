using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Tests.Measuring;

/// <summary>Small invented lessons and measures for the arithmetic's tests.</summary>
internal static class Lessons
{
    public static readonly Measure Tilt = new()
    {
        Id = MeasureId.From("impact-spine-tilt"),
        Name = "Spine tilt at impact",
        Unit = Unit.Degree,
        View = View.FaceOn,
        Moment = Moment.Impact,
        Positive = "away from the target",
        HowTo = "Belt to neck.",
        Plausible = new Limits(-30, 60),
        SetupError = 1.5,
        SwingError = 2.5,
        Step = 4,
        Instruments = [Instrument.Video],
        NeedsFastVideo = true,
        Row = 0,
    };

    public static readonly Measure Head = Tilt with
    {
        Id = MeasureId.From("downswing-head-shift"),
        Unit = Unit.Centimetre,
        Moment = Moment.LeadArmParallel,
        SetupError = .8,
        SwingError = 1.8,
        Step = 3,
        ScalesWithStature = true,
        NeedsFastVideo = false,
        Row = 1,
    };

    public static readonly Measure HeadBack = Head with { Id = MeasureId.From("backswing-head-shift"), Moment = Moment.Top, Row = 2 };

    public static readonly Measure Drift = Head with
    {
        Id = MeasureId.From("head-drift"),
        Derived = new Derivation(DerivationKind.Sum, [HeadBack.Id, Head.Id]),
        Row = 3,
    };

    public static readonly Measure Speed = Tilt with
    {
        Id = MeasureId.From("club-speed"),
        Unit = Unit.MetrePerSecond,
        SetupError = .2,
        SwingError = .8,
        Step = 1.2,
        Instruments = [Instrument.Radar],
        NeedsFastVideo = false,
        Row = 4,
    };

    public static readonly Measure Turn = Tilt with { Id = MeasureId.From("top-shoulder-turn"), SetupError = 4, SwingError = 5, Step = 8, NeedsFastVideo = false, Row = 5 };

    public static readonly Measure Tempo = Tilt with
    {
        Id = MeasureId.From("tempo-ratio"),
        Unit = Unit.Ratio,
        SetupError = .1,
        SwingError = .35,
        Step = .4,
        NeedsFastVideo = false,
        Row = 6,
        Derived = new Derivation(DerivationKind.Ratio, [MeasureId.From("backswing-time"), MeasureId.From("downswing-time")]),
    };

    public static readonly Rulebook Book = BookOf([Tilt, Head, HeadBack, Drift, Speed, Turn, Tempo]);

    public static readonly StudentFacts Adult = new()
    {
        Hand = Hand.Right,
        Level = Level.Improver,
        BirthYear = 1988,
        MinutesPerWeek = 90,
        DaysPerWeek = 3,
        Room = Room.Range,
    };

    public static MeasuredValue Value(Measure measure, double value, int readings = 1) =>
        new() { Measure = measure.Id, Value = new Quantity(value, measure.Unit), Readings = readings };

    public static LessonFacts Of(StudentFacts student, params MeasuredValue[] readings) =>
        new() { AsOf = new LocalDate(2026, 5, 4), Student = student, Club = Club.Driver, Readings = readings };

    public static Finding Graded(Measure measure, double value, int readings = 1) => Graded(Adult, Value(measure, value, readings));

    public static Finding Graded(StudentFacts student, MeasuredValue value) =>
        LessonGrading.Grade(Book, Of(student, value)).Single(f => f.Measure.Id == value.Measure);

    public static Rulebook BookOf(IReadOnlyList<Measure> measures, IReadOnlyList<WantedRange>? ranges = null, IReadOnlyList<RangeAdjustment>? adjustments = null) => new()
    {
        Name = "Test book",
        Measures = measures,
        Ranges = ranges ??
        [
            Wanted(Tilt, 20, 28), Wanted(Head, -5, 5), Wanted(HeadBack, -9, 2), Wanted(Drift, -8, 3), Wanted(Speed, null, null) with { FromGoal = true }, Wanted(Turn, 78, 108),
        ],
        Adjustments = adjustments ?? [new RangeAdjustment { Measure = Turn.Id, FromAge = 60, LowBy = -8, Source = SourceMark.CommonPractice }],
        Patterns = [],
        TrainAfter = [],
        Goals = [],
        Drills = [],
        Progressions = [],
        Cautions = [],
        Dosage = new Dosage
        {
            Stages = [],
            MostDrills = 3,
            OneDrillBelowMinutes = 30,
            TwoDrillsBelowMinutes = 60,
            FewestReps = 15,
            ShortestSessionMinutes = 6,
            SessionsAWeek = 3,
            MostFullSpeedBalls = 60,
            LookAgainAfterDays = 28,
        },
    };

    private static WantedRange Wanted(Measure measure, double? low, double? high) =>
        new() { Measure = measure.Id, Club = Club.Driver, Limits = new Limits(low, high), Source = SourceMark.CommonPractice };
}
