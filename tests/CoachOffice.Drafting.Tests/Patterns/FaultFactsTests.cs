using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Patterns;

namespace CoachOffice.Drafting.Tests.Patterns;

/// <summary>Every draft pays for each different finding a pattern begins with, so patterns begin with those they share.</summary>
public sealed class FaultFactsTests
{
    [Fact]
    public void Patterns_begin_with_the_finding_most_of_them_ask_for()
    {
        var facts = Facts(out var book, ("one", "a.high, b.high"), ("two", "b.high, c.high"), ("three", "d.low, b.high"));
        Assert.Equal(["b.High a.High", "b.High d.Low", "b.High c.High"], Asked(book, facts));
    }

    [Fact]
    public void What_a_pattern_asks_for_alone_comes_first_in_the_others_as_well_and_ties_go_by_the_table()
    {
        var facts = Facts(out var book, ("one", "a.high"), ("two", "c.high, b.high, a.high"), ("three", "c.high, d.low"), ("four", "b.out, d.high"));
        Assert.Equal(["b.None d.High", "a.High", "c.High d.Low", "a.High c.High b.High"], Asked(book, facts));
    }

    [Fact]
    public void Any_of_several_is_asked_of_the_lesson_and_the_same_side_of_both_measures()
    {
        var facts = Facts(out var book, ("one", "a.high | b.high"), ("two", "a~b"), ("three", "c above 3, c.high"), ("four", "a read 3"));
        Assert.Equal(["", "", "c.High", "a.None b.None"], Asked(book, facts));
    }

    [Fact]
    public void A_pattern_is_named_when_another_asks_whether_it_fired()
    {
        var facts = Facts(out var book, ("one", "a.high"), ("two", "b.high unless pattern one"), ("three", "c.high unless d.high | pattern two"), ("zero", "d.high unless pattern one, pattern three"));
        Assert.Equal([true, true, true, false], book.Patterns.Select(p => facts.IsNamed(p.Id)));
        Assert.Equal([0, 2, 1, 3], book.Patterns.Select(facts.DepthOf));
        Assert.Equal(-1, facts.RowOf(MeasureId.From("nowhere")));
    }

    private static FaultFacts Facts(out Rulebook book, params (string Id, string Text)[] patterns)
    {
        var tiny = new[] { "a", "b", "c", "d" }.Aggregate(new TinyBook(), (t, m) => t.Measure(m, Moment.Impact));
        book = patterns.Aggregate(tiny, (t, p) => t.Pattern(WrittenPattern.Read(p.Text) with { Id = PatternId.From(p.Id) })).Compile().Book;
        return new FaultFacts(book);
    }

    private static IEnumerable<string> Asked(Rulebook book, FaultFacts facts) =>
        book.Patterns.Select(p => string.Join(' ', facts.Of(p).Select(f => $"{book.Measures[f.Row].Id.Value}.{f.Side}")));
}
