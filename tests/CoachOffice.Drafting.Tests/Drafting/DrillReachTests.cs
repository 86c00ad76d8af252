using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Tests.Golden;
using CoachOffice.Drafting.Tests.Properties;

namespace CoachOffice.Drafting.Tests.Drafting;

/// <summary>No drill of the shipped rulebook lies where no student ever gets to it.</summary>
public sealed class DrillReachTests
{
    private static readonly Quantity Goal = new(50, Unit.MetrePerSecond);

    [Fact]
    public void Every_drill_is_in_some_whole_draft()
    {
        var unreached = HouseBook.Book.Drills.Where(drill => !InADraft(drill)).Select(d => d.Id.Value).ToList();
        Assert.Empty(unreached);
    }

    private static bool InADraft(Drill drill) =>
        (from progression in HouseBook.Book.Progressions
         from rung in progression.Rungs
         where rung.Drills.Contains(drill.Id)
         from lesson in progression.Faults.SelectMany(WorkedOn)
         from room in drill.Rooms
         select Offers(lesson, room, rung, drill)).Any(offered => offered);

    /// <summary>To a grown-up with all kit and no limit, who tried the other drills of this rung in vain.</summary>
    private static bool Offers(LessonFacts lesson, Room room, Rung rung, Drill drill)
    {
        var student = lesson.Student with { Room = room, Kit = Enum.GetValues<Kit>(), Level = drill.Levels.FirstOrDefault(Level.Improver), MinutesPerWeek = 180 };
        var tried = rung.Drills.Where(d => d != drill.Id).Select(d => new TriedDrill(d, 9, TriedOutcome.NoChange)).ToList();
        var draft = Drafted.Of(lesson with { Student = student, Tried = tried });
        return draft.Stages.Any(s => s.Stage == rung.Stage && s.Drills.Any(d => d.Drill == drill.Id.Value));
    }

    /// <summary>Lessons that would work on this fault: those of the golden table, the worked cases of patterns with this root, and the fault alone, far out.</summary>
    private static IEnumerable<LessonFacts> WorkedOn(FaultId fault) =>
    [
        .. GoldenTable.Why.Keys.Select(GoldenTests.Lesson).Where(lesson => Drafted.Of(lesson).Focus.Any(f => f.Fault == fault)),
        .. HouseBook.Cases.Where(one => one.Fires && HouseBook.Book.Find(one.Pattern)!.Root.Contains(fault)).Select(HouseBook.Lesson),
        .. from club in Enum.GetValues<Club>()
           where HouseBook.Book.RangeOf(fault.Measure, club) is not null
           select HouseBook.Lesson(club, FarOut(fault, club)) with { Student = HouseBook.Student with { ClubSpeedGoal = Goal } },
    ];

    private static MeasuredValue FarOut(FaultId fault, Club club)
    {
        var measure = HouseBook.Book.Find(fault.Measure)!;
        var wanted = HouseBook.Book.RangeOf(fault.Measure, club)!;
        var limits = wanted.FromGoal ? new Limits(Goal.Value, Goal.Value) : wanted.Limits;
        var value = fault.Side == Side.Low ? (limits.Low ?? limits.High)!.Value - (3 * measure.Step!.Value) : (limits.High ?? limits.Low)!.Value + (3 * measure.Step!.Value);
        return HouseBook.Value(fault.Measure.Value, value, readings: 20);
    }
}
