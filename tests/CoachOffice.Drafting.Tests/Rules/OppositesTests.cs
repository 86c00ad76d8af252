using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Tests.Properties;
using CsCheck;

namespace CoachOffice.Drafting.Tests.Rules;

/// <summary>No plan ever holds a drill that pushes a measured fault further out: all pairs of faults, and thousands of lessons nobody gave.</summary>
public sealed class OppositesTests
{
    private static int Lessons => 3 * Drafted.Lessons;

    public static TheoryData<string> Clubs => [.. Enum.GetValues<Club>().Select(c => Domain.Terms.Of(c))];

    [Theory]
    [MemberData(nameof(Clubs))]
    public void Not_in_any_pair_of_faults(string club)
    {
        var far = FarOut(Domain.Terms.Parse<Club>(club));
        foreach (var one in far)
        {
            foreach (var other in far.Where(o => string.CompareOrdinal(o.Measure.Value, one.Measure.Value) > 0))
                Hold(HouseBook.Lesson(Domain.Terms.Parse<Club>(club), one, other));
        }
    }

    [Fact]
    public void Nor_in_lessons_nobody_gave() => RandomLessons.One.Sample(Hold, iter: Lessons);

    /// <summary>What a pattern explains is out whenever it fires, so drills for its root that push just that further out would leave nothing to do.</summary>
    [Fact]
    public void No_pattern_shuts_out_the_drills_for_its_own_root() =>
        Assert.Empty(
            from pattern in HouseBook.Book.Patterns
            from root in pattern.Root
            from rung in HouseBook.Book.For(root)!.Rungs
            where rung.Stage < Stage.Mix
            from consequence in pattern.Explains.Concat(pattern.ExplainsIfPresent).Where(f => f.Measure != root.Measure)
            where rung.Drills.Select(d => HouseBook.Book.Find(d)!).All(d => d.Opposites.Contains(consequence) || d.Trains.Intersect(pattern.Forbids).Any())
            select $"{pattern.Id.Value}: {rung.Stage} for {root} while {consequence}");

    private static void Hold(LessonFacts facts)
    {
        var everything = facts with { Student = facts.Student with { Kit = Enum.GetValues<Kit>(), MinutesPerWeek = 240 } };
        var draft = Drafter.Draft(HouseBook.Compiled, everything);
        var outside = draft.Findings.Where(f => f.Grade >= Grade.Mild).Select(f => new FaultId(MeasureId.From(f.Measure), f.Side)).ToHashSet();
        foreach (var drill in draft.Stages.SelectMany(s => s.Drills).Select(d => HouseBook.Book.Find(DrillId.From(d.Drill))!))
            Assert.Empty(drill.Opposites.Intersect(outside).Select(fault => $"{drill.Id.Value} pushes {fault}"));
    }

    private static List<MeasuredValue> FarOut(Club club) =>
    [
        .. from measure in HouseBook.Book.Measures
           let range = HouseBook.Book.RangeOf(measure.Id, club)
           where range is { FromGoal: false }
           from edge in new[] { (Value: range.Limits.Low, Way: -1), (Value: range.Limits.High, Way: 1) }
           where edge.Value is not null
           select HouseBook.Value(measure.Id.Value, edge.Value!.Value + (edge.Way * 3 * measure.Step!.Value), readings: 20),
    ];
}
