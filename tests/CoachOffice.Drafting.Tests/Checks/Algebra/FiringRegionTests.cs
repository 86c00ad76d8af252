using CoachOffice.Domain.Measuring;
using CoachOffice.Drafting.Checks;
using CoachOffice.Drafting.Checks.Algebra;
using CoachOffice.Drafting.Checks.Examples;

namespace CoachOffice.Drafting.Tests.Checks.Algebra;

public sealed class FiringRegionTests
{
    [Fact]
    public void The_plainest_lesson_of_a_region_makes_the_drafter_fire_the_pattern()
    {
        var rules = new RuleBase(HouseBook.Compiled.Loaded);
        var unshown = (from club in Enum.GetValues<Club>()
                       let firing = new FiringRegion(rules.Of(club))
                       from pattern in HouseBook.Book.Patterns
                       let region = firing.Of(pattern)
                       where !region.IsEmpty && new ExampleOf(rules).In([region], ExampleOf.Fires(pattern)) is null
                       select $"{pattern.Id.Value} {club}").ToList();

        Assert.Empty(unshown);
    }

    [Fact]
    public void Every_worked_case_lies_in_the_region_of_its_pattern_exactly_when_it_fires()
    {
        var rules = new RuleBase(HouseBook.Compiled.Loaded);
        var wrong = HouseBook.Cases.Where(c => c.Readings.All(r => r.Measure != NamedMeasures.ClubSpeed)).Where(one =>
        {
            var space = rules.Of(one.Club);
            var found = HouseBook.Context(HouseBook.Lesson(one)).Findings;
            if (found.Any(f => f.IsDerived)) return false;
            var lesson = found.Aggregate((Box?)Box.Everything(space), (box, f) => box?.And(f.Measure.Id, CellOf(space, f)));
            Assert.True(lesson is not null, $"{one.Pattern.Value}: {one.Name}: {string.Join("; ", found.Where(f => CellOf(space, f).IsZero).Select(f => $"{f.Fault} {f.Grade} {f.Value} {f.Readings}"))}");
            foreach (var unread in HouseBook.Book.Measures.Where(m => found.All(f => f.Measure.Id != m.Id))) lesson = lesson?.And(unread.Id, 1);
            var pattern = HouseBook.Book.Find(one.Pattern)!;
            return Leans(pattern) is false && new FiringRegion(space).Of(pattern).Meets(new CoachOffice.Drafting.Checks.Algebra.Region(space, [lesson!])) != one.Fires;
        }).Select(c => $"{c.Pattern.Value}: {c.Name}").ToList();

        Assert.Empty(wrong);
    }

    /// <summary>Counts other measures, which boxes cannot tell.</summary>
    private static bool Leans(Domain.Plans.Pattern pattern) =>
        pattern.When.OfType<Domain.Plans.OthersInRangeCondition>().Any() || pattern.Unless.OfType<Domain.Plans.FiredCondition>().Any(f => Leans(HouseBook.Book.Find(f.Pattern)!));

    private static System.Numerics.BigInteger CellOf(Space space, Finding finding)
    {
        var cells = space.Of(finding.Measure.Id);
        var conditions = Leaves.Of(space.Book).Where(c => Leaves.MeasureOf(c) == finding.Measure.Id).ToList();
        var like = cells.Where(f => f.Grade == finding.Grade && f.Side == finding.Side);
        var alone = new CoachOffice.Drafting.Patterns.LessonContext(space.Club, [finding]);
        foreach (var condition in conditions)
        {
            var holds = new CoachOffice.Drafting.Patterns.ConditionTest(alone, space.Book.Patterns[0], _ => false).Of(condition) == CoachOffice.Drafting.Patterns.Truth.Yes;
            like &= holds ? cells.Where(condition) : ~cells.Where(condition);
        }

        return like;
    }
}
