using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Drills;
using CoachOffice.Drafting.Ordering;

namespace CoachOffice.Drafting.Tests.Drafting;

/// <summary>No drill of the shipped rulebook lies where no student ever gets to it.</summary>
public sealed class DrillReachTests
{
    private static readonly Quantity Goal = new(50, Unit.MetrePerSecond);

    [Fact]
    public void Every_drill_is_offered_to_somebody()
    {
        var unreached = HouseBook.Book.Drills.Where(drill => !Offered(drill)).Select(d => d.Id.Value).ToList();
        Assert.Empty(unreached);
    }

    private static bool Offered(Drill drill) =>
        (from progression in HouseBook.Book.Progressions
         from rung in progression.Rungs
         where rung.Drills.Contains(drill.Id)
         from fault in progression.Faults
         from club in Enum.GetValues<Club>()
         where HouseBook.Book.RangeOf(fault.Measure, club) is not null
         from room in drill.Rooms
         select Offers(fault, club, room, rung, drill)).Any(offered => offered);

    /// <summary>To a grown-up with all kit and no limit, who tried the other drills of this rung in vain.</summary>
    private static bool Offers(FaultId fault, Club club, Room room, Rung rung, Drill drill)
    {
        var finding = FarOut(fault, club);
        var student = HouseBook.Student with { Room = room, Kit = Enum.GetValues<Kit>(), Level = drill.Levels.FirstOrDefault(Level.Improver), MinutesPerWeek = 180, ClubSpeedGoal = Goal };
        var tried = rung.Drills.Where(d => d != drill.Id).Select(d => new TriedDrill(d, 9, TriedOutcome.NoChange)).ToList();
        var facts = HouseBook.Lesson(club, finding) with { Student = student, Tried = tried };
        var at = LessonAtHand.Of(HouseBook.Book, facts);
        if (at.Lesson.Out(fault) is not { } found) return false;
        var ladder = new Ladders(at, new Withholding(at, [])).For(new Candidate(fault, found, null, [fault]), Week.Of(facts, HouseBook.Book.Dosage));
        return ladder.Rungs.Any(r => r.Stage == rung.Stage && r.Drills.Any(d => d.Drill == drill.Id.Value));
    }

    private static MeasuredValue FarOut(FaultId fault, Club club)
    {
        var measure = HouseBook.Book.Find(fault.Measure)!;
        var wanted = HouseBook.Book.RangeOf(fault.Measure, club)!;
        var limits = wanted.FromGoal ? new Limits(Goal.Value, Goal.Value) : wanted.Limits;
        var value = fault.Side == Side.Low ? (limits.Low ?? limits.High)!.Value - (3 * measure.Step!.Value) : (limits.High ?? limits.Low)!.Value + (3 * measure.Step!.Value);
        return HouseBook.Value(fault.Measure.Value, value, readings: 20);
    }
}
