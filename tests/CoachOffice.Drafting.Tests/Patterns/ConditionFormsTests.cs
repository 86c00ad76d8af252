using System.Globalization;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Patterns;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.Drafting.Tests.Patterns;

/// <summary>Every form of condition, held against a lesson in which it holds, one in which it does not, and one in which nobody read the measure: by the evaluator with all it says, by the engine, by the quick look, and as a worked case.</summary>
public sealed class ConditionFormsTests
{
    private static readonly string[] Measures = ["a", "b", "c", "d"];

    /// <summary>All are wanted from 0 to 10 with a step of 4: 12 is mild, 15 moderate, 25 marked, -5 moderate on the low side. A count of swings stands behind an x.</summary>
    public static TheoryData<string, string, string> Circumstances => new()
    {
        { "a.high", "a=15", "holds on [a]" },
        { "a.high", "a=12", "no on [a] against [nothing at least moderate]" },
        { "a.high", "a=10", "no against [not: a.high]" },
        { "a.high", "a=-5", "no against [not: a.high]" },
        { "a.high", "", "no missing [a]" },
        { "a.low", "a=-5", "holds on [a]" },
        { "a.low", "a=15", "no against [not: a.low]" },
        { "a.out", "a=-5", "holds on [a]" },
        { "a.out", "a=15", "holds on [a]" },
        { "a.out", "a=5", "no against [not: a.out]" },
        { "a.high moderate, b.high", "a=15 b=12", "holds on [a; b]" },
        { "a.high moderate, b.high", "a=12 b=15", "near on [b] against [not: a.high at least moderate]" },
        { "a.high moderate, b.high", "a=14 b=15", "near on [b] against [not: a.high at least moderate]" },
        { "a.high moderate, b.high", "b=15", "undecided on [b] missing [a] holds up" },
        { "a.high moderate, b.high", "a=15", "undecided on [a] missing [b] holds up" },
        { "a.high marked", "a=25", "holds on [a]" },
        { "a.high marked", "a=15", "no against [not: a.high at least marked]" },
        { "a below -4", "a=-5", "holds on [a]" },
        { "a below -4", "a=-4", "no against [not: a below -4]" },
        { "a below -4", "a=15", "no against [not: a below -4]" },
        { "a below -4", "", "no missing [a]" },
        { "a below -5", "a=-5", "no against [not: a below -5]" },
        { "a above 15", "a=15", "no against [not: a above 15]" },
        { "a above 14", "a=15", "holds on [a]" },
        { "a above 14", "a=14", "no against [not: a above 14]" },
        { "a above 14", "a=-5", "no against [not: a above 14]" },
        { "a.high, b in", "a=15 b=5", "holds on [a]" },
        { "a.high, b in", "a=15 b=15", "near on [a] against [not: b in range]" },
        { "a.high, b in", "a=15", "undecided on [a] missing [b] holds up" },
        { "a.high, b off", "a=15 b=15", "holds on [a]" },
        { "a.high, b off", "a=15 b=5", "near on [a] against [not: b not in range]" },
        { "a.high, b off", "a=15", "holds on [a]" },
        { "a.high, b known", "a=15 b=25", "holds on [a]" },
        { "a.high, b known", "a=15", "undecided on [a] missing [b] holds up" },
        { "a.high, b unknown", "a=15 b=5", "near on [a] against [not: b not measured]" },
        { "a.high, b unknown", "a=15", "holds on [a]" },
        { "a.high, b read 3", "a=15 b=5x3", "holds on [a]" },
        { "a.high, b read 3", "a=15 b=5x2", "near on [a] against [not: b read at least 3 times]" },
        { "a.high, b read 3", "a=15", "undecided on [a] missing [b] holds up" },
        { "a.high, others 2", "a=15 b=5 c=5", "holds on [a]" },
        { "a.high, others 2", "a=15 b=5", "near on [a] against [not: at least 2 others in range]" },
        { "a.high, others 2", "a=15 b=5 c=15", "near on [a] against [not: at least 2 others in range]" },
        { "a.high, others 0", "a=15", "holds on [a]" },
        { "a.high, b.high, others 1", "a=15 b=15 c=5", "holds on [a; b]" },
        { "a.high, b.high, others 1", "a=15 b=15", "near on [a; b] against [not: at least 1 others in range]" },
        { "a~b", "a=15 b=12", "holds on [a; b]" },
        { "a~b", "a=12 b=12", "no on [a; b] against [nothing at least moderate]" },
        { "a~b", "a=-5 b=-2", "holds on [a; b]" },
        { "a~b", "a=15 b=-5", "no against [not: same side: a, b]" },
        { "a~b", "a=15 b=5", "no against [not: same side: a, b]" },
        { "a~b", "a=15", "undecided on [a] missing [b] holds up" },
        { "a~b", "b=-5", "undecided on [b] missing [a] holds up" },
        { "a~b", "", "no missing [a; b]" },
        { "a.high | b.high", "a=15 b=15", "holds on [a; b]" },
        { "a.high | b.high", "a=15", "holds on [a]" },
        { "a.high | b.high", "b=15", "holds on [b]" },
        { "a.high | b.high", "a=5 b=5", "no against [not: any of a.high, b.high]" },
        { "a.high | b.high", "a=5", "no missing [b]" },
        { "a.high | b.high", "a=15 b=5", "holds on [a]" },
        { "a.high | b.high", "a=12", "no on [a] against [nothing at least moderate]" },
        { "a.high | b.high", "b=12", "no on [b] against [nothing at least moderate]" },
        { "a.high | b.high", "", "no missing [a; b]" },
        { "a~b | c.high", "a=15", "no missing [b; c]" },
        { "a~b | c.high", "c=15", "holds on [c]" },
        { "a~b | c.high", "a=15 b=5 c=5", "no against [not: any of same side: a, b, c.high]" },
        { "a~b | c.high", "a=15 b=15 c=15", "holds on [a; b; c]" },
        { "a above 14 | b.low", "a=15", "holds on [a]" },
        { "a above 14 | b.low", "a=12 b=-5", "holds on [b]" },
        { "a above 14 | b.low", "a=12 b=-2", "no on [b] against [nothing at least moderate]" },
        { "a.high needs b", "a=15 b=5", "holds on [a]" },
        { "a.high needs b", "a=15 b=12", "near on [a] against [not: b in range]" },
        { "a.high needs b", "a=15", "undecided on [a] missing [b] holds up" },
        { "a.high, b.high needs c, d", "a=15 b=15 c=5 d=5", "holds on [a; b]" },
        { "a.high, b.high needs c, d", "a=15 b=15 c=15 d=5", "near on [a; b] against [not: c in range]" },
        { "a.high, b.high needs c, d", "a=15 b=15 c=5", "undecided on [a; b] missing [d] holds up" },
        { "a.high, b.high needs c, d", "a=15 b=5 c=15 d=5", "no on [a] against [not: b.high; not: c in range]" },
        { "a.high, b.high needs c, d", "a=15 b=5 c=5", "no on [a] missing [d] against [not: b.high]" },
        { "a.high unless b.high", "a=15 b=12", "near on [a] against [unless: b.high]" },
        { "a.high unless b.high", "a=15 b=5", "holds on [a]" },
        { "a.high unless b.high", "a=15", "holds on [a] passed [b]" },
        { "a.high unless b.high", "a=15 b=-5", "holds on [a]" },
        { "a.high unless b off", "a=15 b=15", "near on [a] against [unless: b not in range]" },
        { "a.high unless b off", "a=15 b=5", "holds on [a]" },
        { "a.high unless b off", "a=15", "holds on [a] passed [b]" },
        { "a.high unless b in", "a=15 b=5", "near on [a] against [unless: b in range]" },
        { "a.high unless b in", "a=15 b=15", "holds on [a]" },
        { "a.high unless b in", "a=15", "holds on [a] passed [b]" },
        { "a.high unless b unknown", "a=15", "near on [a] against [unless: b not measured]" },
        { "a.high unless b unknown", "a=15 b=5", "holds on [a]" },
        { "a.high unless b known", "a=15", "holds on [a] passed [b]" },
        { "a.high unless b known", "a=15 b=5", "near on [a] against [unless: b measured]" },
        { "a.high unless b read 2", "a=15 b=5x2", "near on [a] against [unless: b read at least 2 times]" },
        { "a.high unless b read 2", "a=15 b=5", "holds on [a]" },
        { "a.high unless others 1", "a=15 b=5", "near on [a] against [unless: at least 1 others in range]" },
        { "a.high unless others 1", "a=15", "holds on [a]" },
        { "a.high unless b~c", "a=15 b=15 c=15", "near on [a] against [unless: same side: b, c]" },
        { "a.high unless b~c", "a=15 b=15", "holds on [a] passed [c]" },
        { "a.high unless b~c", "a=15 b=15 c=-5", "holds on [a]" },
        { "a.high unless b off | c.high", "a=15 b=15", "near on [a] against [unless: any of b not in range, c.high]" },
        { "a.high unless b off | c.high", "a=15", "holds on [a] passed [b; c]" },
        { "a.high unless b off | c.high", "a=15 b=5", "holds on [a] passed [c]" },
        { "a.high unless b off | c.high", "a=15 b=5 c=12", "near on [a] against [unless: any of b not in range, c.high]" },
        { "a.high unless b.high, c.high", "a=15 b=15 c=15", "no on [a] against [unless: b.high; unless: c.high]" },
        { "a.high unless b.high, c.high", "a=15 b=15", "near on [a] passed [c] against [unless: b.high]" },
        { "a.high unless pattern other", "a=15 d=15", "near on [a] against [unless: pattern other]" },
        { "a.high unless pattern other", "a=15 d=12", "holds on [a]" },
        { "a.high unless pattern other", "a=15", "holds on [a]" },
        { "a.high unless b.high | pattern other", "a=15 d=15", "near on [a] against [unless: any of b.high, pattern other]" },
        { "a.high unless b.high | pattern other", "a=15 b=15", "near on [a] against [unless: any of b.high, pattern other]" },
        { "a.high unless b.high | pattern other", "a=15", "holds on [a] passed [b]" },
        { "a.high, b.high unless c.high", "a=15 c=15", "no on [a] missing [b] against [unless: c.high]" },
        { "a.high, b.high unless c.high", "a=15 b=5 c=15", "no on [a] against [not: b.high; unless: c.high]" },
    };

    [Theory]
    [MemberData(nameof(Circumstances))]
    public void It_is_told_what_speaks_for_a_pattern_what_is_missing_and_what_stands_against_it(string pattern, string readings, string expected)
    {
        var book = Book(pattern);
        var lesson = Lesson(book.Book, readings);
        var match = PatternEvaluator.Evaluate(book.Book, lesson).Single(m => m.Pattern.Id.Value == "asked");

        Assert.Equal(expected, Said(match));
        Assert.Equal(match.Holds, book.Fire(lesson).Any(p => p.Id.Value == "asked"));
        var quick = new QuickLook(book.Book.Find(PatternId.From("asked"))!, m => book.Book.Find(m)!.Row);
        Assert.Equal(match.Objections.All(o => o == Objection.NothingModerate) || (match.Objections.Count == 1 && match.Missing.Count == 0), quick.IsNear(lesson, book.Fire(lesson)));
        foreach (var fires in new[] { true, false }) Assert.Equal(match.Holds == fires, CaseRun.Failures(WithCase(book, readings, fires)).Count == 0);
    }

    [Fact]
    public void A_case_that_comes_out_otherwise_is_told_at_its_place_with_its_name_why_and_what_hinders_it()
    {
        var book = Book("a.high, b.high needs c");
        Assert.Equal("cases.yaml:7:5: cases[2]: asked fires here and should not: So it is. (in \"one\")", Assert.Single(CaseRun.Failures(WithCase(book, "a=15 b=15 c=5", false))).ToString());
        Assert.Equal("cases.yaml:7:5: cases[2]: asked does not fire here and should: So it is. (in \"one\": not: b.high; not measured: c)", Assert.Single(CaseRun.Failures(WithCase(book, "a=15 b=5", true))).ToString());
        Assert.Contains("it does not speak of this club", Assert.Single(CaseRun.Failures(WithCase(Book("a.high only driver"), "a=15", true))).Message, StringComparison.Ordinal);
    }

    private static string Said(PatternMatch match)
    {
        var kind = match.Holds ? "holds" : match.IsUndecided ? "undecided" : match.IsNearMiss ? "near" : "no";
        return $"{kind}{Part("on", match.Matched.Select(f => f.Measure.Id.Value))}{Part("missing", match.Missing.Select(m => m.Value))}{Part("passed", match.Passed.Select(m => m.Value))}{Part("against", match.Against)}{(match.HoldsUp ? " holds up" : "")}";
    }

    private static string Part(string name, IEnumerable<string> parts) => parts.ToList() is { Count: > 0 } all ? $" {name} [{string.Join("; ", all)}]" : "";

    private static CompiledRulebook Book(string pattern)
    {
        var tiny = Measures.Aggregate(new TinyBook(), (book, m) => book.Measure(m, Moment.Impact));
        return tiny.Pattern("other", 5, "d.high", []).Pattern(WrittenPattern.Read(pattern)).Compile();
    }

    private static CompiledRulebook WithCase(CompiledRulebook book, string readings, bool fires)
    {
        PatternCase one = new() { Pattern = PatternId.From("asked"), Name = "one", Club = Club.Iron, Readings = Values(book.Book, readings), Fires = fires, Why = "So it is.", File = "cases.yaml", Line = 7, Column = 5, Path = "cases[2]" };
        return CompiledRulebook.Compile(book.Loaded with { Cases = [one] });
    }

    private static LessonContext Lesson(Rulebook book, string readings) => new(Club.Iron, LessonGrading.Grade(book, HouseBook.Lesson(Club.Iron, Values(book, readings))));

    private static List<MeasuredValue> Values(Rulebook book, string readings) =>
        [.. readings.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(r => r.Split('=', 'x')).Select(r => new MeasuredValue
        {
            Measure = MeasureId.From(r[0]),
            Value = new Quantity(double.Parse(r[1], CultureInfo.InvariantCulture), book.Find(MeasureId.From(r[0]))!.Unit),
            Readings = r.Length > 2 ? int.Parse(r[2], CultureInfo.InvariantCulture) : 1,
            Instrument = Instrument.Video,
        })];
}
