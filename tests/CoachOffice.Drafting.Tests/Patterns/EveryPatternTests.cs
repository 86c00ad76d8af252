using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Patterns;

namespace CoachOffice.Drafting.Tests.Patterns;

/// <summary>Each pattern of the shipped rulebook on its own: it fires, it stops just below, it waits for what nobody measured.</summary>
public sealed class EveryPatternTests
{
    public static TheoryData<string> All => [.. HouseBook.Book.Patterns.Select(p => p.Id.Value)];

    [Theory]
    [MemberData(nameof(All))]
    public void Fires_on_its_findings_and_names_them(string id)
    {
        var lesson = Firing(id);
        Assert.Contains(HouseBook.Compiled.Fire(HouseBook.Context(lesson)), p => p.Id.Value == id);
        var match = Match(id, lesson);
        Assert.True(match.Holds);
        Assert.NotEmpty(match.Matched);
        Assert.Contains(match.Pattern.Root, root => match.Matched.Any(f => f.Fault == root));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Just_below_nothing_is_moderate_and_it_does_not_fire(string id)
    {
        var lesson = Firing(id);
        var mild = Match(id, lesson).Matched.ToDictionary(f => f.Measure.Id, AtTheEndOfMild);
        var below = lesson with { Readings = [.. lesson.Readings.Select(r => mild.TryGetValue(r.Measure, out var value) ? r with { Value = value, Readings = 60 } : r with { Readings = 60 })] };
        Assert.All(HouseBook.Context(below).Findings.Where(f => mild.ContainsKey(f.Measure.Id)), f => Assert.InRange(f.Weight, 0, 1));
        Assert.DoesNotContain(HouseBook.Compiled.Fire(HouseBook.Context(below)), p => p.Id.Value == id);
        Assert.False(Match(id, below).Holds);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Without_a_reading_it_rests_on_it_does_not_fire_and_says_what_is_missing(string id)
    {
        var lesson = Firing(id);
        var pattern = HouseBook.Book.Find(PatternId.From(id))!;
        foreach (var measure in pattern.When.OfType<OutCondition>().Select(c => c.Measure).Concat(pattern.Needs))
        {
            var without = lesson with { Readings = [.. lesson.Readings.Where(r => r.Measure != measure)] };
            Assert.DoesNotContain(HouseBook.Compiled.Fire(HouseBook.Context(without)), p => p.Id.Value == id);
            Assert.Contains(measure, Match(id, without).Missing);
        }
    }

    private static LessonFacts Firing(string id) => HouseBook.Lesson(HouseBook.Cases.First(c => c.Pattern.Value == id && c.Fires));

    private static PatternMatch Match(string id, LessonFacts lesson) =>
        PatternEvaluator.Evaluate(HouseBook.Book, HouseBook.Context(lesson)).Single(m => m.Pattern.Id.Value == id);

    private static Quantity AtTheEndOfMild(Finding finding) =>
        new(finding.Side == Side.Low ? finding.Range!.Low!.Value - finding.Step!.Value : finding.Range!.High!.Value + finding.Step!.Value, finding.Measure.Unit);
}
