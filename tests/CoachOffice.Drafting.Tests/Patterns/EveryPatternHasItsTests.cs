namespace CoachOffice.Drafting.Tests.Patterns;

public sealed class EveryPatternHasItsTests
{
    [Fact]
    public void Every_pattern_of_the_book_has_a_class_named_after_it()
    {
        var tested = typeof(PatternRuleTests).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(PatternRuleTests)))
            .Select(t => (t.Name, Of: ((PatternRuleTests)Activator.CreateInstance(t)!).Pattern)).ToList();

        Assert.All(tested, t => Assert.Equal($"{t.Of.Replace("-", "", StringComparison.Ordinal)}tests", t.Name.ToLowerInvariant()));
        Assert.Equal(HouseBook.Book.Patterns.Select(p => p.Id.Value), tested.Select(t => t.Of).Order(StringComparer.Ordinal));
    }
}
