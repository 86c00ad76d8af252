using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Causes;
using CoachOffice.Drafting.Ordering;
using CoachOffice.Drafting.Words;
using NodaTime;

namespace CoachOffice.Drafting.Coverage;

/// <summary>Goes through every fault that can be worked on and every kind of student, by the same steps a draft takes, and finds where the rulebook has no answer.</summary>
public static class RulebookCoverage
{
    private const int StepsOutside = 3;
    private const int ManyReadings = 20;
    private static readonly LocalDate Today = new(2026, 1, 15);
    private static readonly Quantity SpeedGoal = new(50, Unit.MetrePerSecond);

    private static readonly HashSet<CautionOccasion> Instead =
    [
        CautionOccasion.LimitCurrent, CautionOccasion.StagesLeftOutRoom, CautionOccasion.StagesLeftOut, CautionOccasion.NoDrillTime,
        CautionOccasion.NoDrillInVain, CautionOccasion.NoDrillOpposite, CautionOccasion.NoDrillPlace, CautionOccasion.NoDrillLimit,
    ];

    /// <summary>The faults a plan may work on: roots of patterns, and what may stand alone. By row of the measure, then side.</summary>
    public static IReadOnlyList<FaultId> Faults(Rulebook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        var roots = book.Patterns.SelectMany(p => p.Root).ToHashSet();
        return
        [
            .. from measure in book.Measures
               where measure.Step is not null
               from side in new[] { Side.Low, Side.High }
               let fault = new FaultId(measure.Id, side)
               where ClubOf(book, fault) is not null && !measure.NoFaultSides.Contains(side)
               where roots.Contains(fault) || !measure.StyleOnly
               select fault,
        ];
    }

    /// <summary>Every fault for every student. A fault without a ladder is reported as missing every stage.</summary>
    public static IEnumerable<CoveredWork> Of(Rulebook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return Faults(book).SelectMany(fault => CoveredStudent.All.Select(student => Work(book, fault, student)));
    }

    private static CoveredWork Work(Rulebook book, FaultId fault, CoveredStudent student)
    {
        var at = LessonAtHand.Of(book, Lesson(book, fault, student));
        var picked = new FocusPick(at, new TrainAfterLaws([]), CauseGraph.Of([], at), [new Candidate(fault, at.Out(fault), null, [fault])]).Pick();
        var ladder = picked.Focuses.Select(f => f.Ladder).Concat(picked.Skipped.Select(s => s.Ladder)).First();
        var offered = ladder.Rungs.Select(r => r.Stage).ToList();
        return new CoveredWork(
            fault,
            student,
            offered,
            Enum.GetValues<Stage>().Except(offered).ToDictionary(s => s, s => ladder.Missed.FirstOrDefault(m => m.Stage == s)?.Because),
            [.. new PlanCautions(at, picked).All().Select(c => c.Id).Where(id => book.Cautions.Any(c => c.Id.Value == id && Instead.Contains(c.Occasion)))]);
    }

    private static LessonFacts Lesson(Rulebook book, FaultId fault, CoveredStudent student) => new()
    {
        AsOf = Today,
        Club = ClubOf(book, fault)!.Value,
        Readings = [FarOut(book, fault)],
        Student = new StudentFacts
        {
            Hand = Hand.Right,
            Level = student.Level,
            BirthYear = Today.Year - 40,
            MinutesPerWeek = 90,
            DaysPerWeek = 3,
            Room = student.Room,
            Kit = student.HasKit ? CoveredStudent.UsualKit : [],
            Limits = student.Limit is null ? [] : [student.Limit],
            ClubSpeedGoal = SpeedGoal,
        },
    };

    private static MeasuredValue FarOut(Rulebook book, FaultId fault)
    {
        var measure = book.Find(fault.Measure)!;
        var range = book.RangeOf(fault.Measure, ClubOf(book, fault)!.Value)!;
        var edge = range.FromGoal ? SpeedGoal.Value : (fault.Side == Side.Low ? range.Limits.Low : range.Limits.High)!.Value;
        var value = edge + (StepsOutside * measure.Step!.Value * (fault.Side == Side.Low ? -1 : 1));
        return new MeasuredValue { Measure = measure.Id, Value = new Quantity(value, measure.Unit), Readings = ManyReadings, Instrument = measure.Instruments[0] };
    }

    /// <summary>The first club with an edge on this side, or null.</summary>
    private static Club? ClubOf(Rulebook book, FaultId fault) =>
        Enum.GetValues<Club>().Select(c => (Club?)c).FirstOrDefault(c => book.RangeOf(fault.Measure, c!.Value) is { } range
            && (range.FromGoal ? fault.Side == Side.Low : (fault.Side == Side.Low ? range.Limits.Low : range.Limits.High) is not null));
}
