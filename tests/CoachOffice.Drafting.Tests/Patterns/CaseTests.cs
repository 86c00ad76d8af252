using CoachOffice.Drafting.Patterns;

namespace CoachOffice.Drafting.Tests.Patterns;

/// <summary>Runs every worked case beside the rules, by the rule engine and by the plain evaluator.</summary>
public sealed class CaseTests
{
    public static TheoryData<string, string> All => [.. HouseBook.Cases.Select(c => (c.Pattern.Value, c.Name))];

    [Theory]
    [MemberData(nameof(All))]
    public void The_case_comes_out_as_its_author_says(string pattern, string name)
    {
        var one = HouseBook.Cases.Single(c => c.Pattern.Value == pattern && c.Name == name);
        var lesson = HouseBook.Context(HouseBook.Lesson(one));
        Assert.True(one.Fires == HouseBook.Compiled.Fire(lesson).Any(p => p.Id == one.Pattern), $"{one.File}:{one.Line}: by the engine; {one.Why}");
        Assert.True(one.Fires == PatternEvaluator.Evaluate(HouseBook.Book, lesson).Any(m => m.Holds && m.Pattern.Id == one.Pattern), $"{one.File}:{one.Line}: by the evaluator; {one.Why}");
    }

    [Fact]
    public void Every_pattern_has_a_case_that_fires_and_one_that_does_not() =>
        Assert.All(HouseBook.Book.Patterns, p =>
        {
            Assert.Contains(HouseBook.Cases, c => c.Pattern == p.Id && c.Fires);
            Assert.Contains(HouseBook.Cases, c => c.Pattern == p.Id && !c.Fires);
        });
}
