using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Patterns;
using CsCheck;

namespace CoachOffice.Drafting.Tests.Properties;

/// <summary>What holds for any patterns an instructor could write, not only for those that ship.</summary>
public sealed class AnyPatternProperties
{
    private static readonly MeasureId[] Measures = [.. HouseBook.Book.Measures.Take(6).Select(m => m.Id)];

    private static readonly Gen<Condition> Single = Gen.OneOf<Condition>(
        from m in Gen.OneOf(Measures) from side in Gen.OneOf(Side.None, Side.Low, Side.High) from grade in Gen.OneOf(Grade.Mild, Grade.Moderate) select (Condition)new OutCondition(m, side, grade),
        from m in Gen.OneOf(Measures) from side in Gen.OneOf(Side.Low, Side.High) from bound in Gen.Int[-10, 10] select (Condition)new ValueCondition(m, side, bound),
        from m in Gen.OneOf(Measures) from state in Gen.OneOf(Enum.GetValues<MeasureState>()) select (Condition)new StateCondition(m, state),
        from m in Gen.OneOf(Measures) from swings in Gen.Int[1, 8] select (Condition)new ReadingsCondition(m, swings),
        from pair in Gen.Shuffle(Measures, 2, 2) select (Condition)new SameSideCondition(pair),
        from least in Gen.Int[0, 4] select (Condition)new OthersInRangeCondition(least));

    private static readonly Gen<Condition> Any = Gen.Frequency((3, Single), (1, Single.Array[2, 3].Select(a => (Condition)new AnyOfCondition(a))));

    private static readonly Gen<Pattern[]> Books =
        from parts in Gen.Select(Any.Array[1, 3], Gen.OneOf(Measures).Array[0, 1], Any.Array[0, 2], Gen.Bool).Array[2, 6]
        select parts.Select((p, i) => HouseBook.Book.Patterns[0] with
        {
            Id = PatternId.From($"pattern-{i}"),
            Precedence = 10 + (i % 3),
            Clubs = [],
            When = p.Item1,
            Needs = p.Item2,
            Unless = p.Item4 && i > 0 ? [.. p.Item3, new FiredCondition(PatternId.From($"pattern-{i - 1}"))] : p.Item3,
        }).ToArray();

    private static readonly Gen<MeasuredValue[]> Readings =
        from which in Gen.Shuffle(Measures, 0, Measures.Length)
        from values in Gen.Select(Gen.Int[-30, 40], Gen.Int[1, 9]).Array[Measures.Length]
        select which.Select((m, i) => HouseBook.Value(m.Value, values[i].Item1, values[i].Item2)).ToArray();

    [Fact]
    public void The_engine_fires_exactly_the_patterns_the_plain_evaluator_says_hold() =>
        Gen.Select(Books, Readings.Array[6]).Sample((patterns, lessons) =>
        {
            var book = HouseBook.With(patterns);
            var network = PatternNetwork.Compile(book);
            foreach (var lesson in lessons.Select(readings => HouseBook.Context(HouseBook.Lesson(Club.Iron, readings))))
                Assert.Equal(PatternEvaluator.Evaluate(book, lesson).Where(m => m.Holds).Select(m => m.Pattern.Id.Value), network.Fire(lesson).Select(p => p.Id.Value));
        }, iter: Drafted.Lessons);

    [Fact]
    public void Compiled_with_the_tests_of_another_book_the_engine_fires_as_compiled_alone() =>
        Gen.Select(Books, Books, Readings.Array[6]).Sample((before, patterns, lessons) =>
        {
            var book = HouseBook.With(patterns);
            var (alone, after) = (PatternNetwork.Compile(book), PatternNetwork.Compile(book, PatternNetwork.Compile(HouseBook.With([.. before]))));
            foreach (var lesson in lessons.Select(readings => HouseBook.Context(HouseBook.Lesson(Club.Iron, readings))))
                Assert.Equal(alone.Fire(lesson).Select(p => p.Id.Value), after.Fire(lesson).Select(p => p.Id.Value));
        }, iter: Drafted.Lessons);

    [Fact]
    public void Looked_up_by_measure_no_pattern_that_holds_or_nearly_does_is_missed_and_each_is_judged_as_before() =>
        Gen.Select(Books, Readings.Array[6]).Sample((patterns, lessons) =>
        {
            var book = HouseBook.With(patterns);
            var (network, index) = (PatternNetwork.Compile(book), new PatternIndex(book));
            foreach (var lesson in lessons.Select(readings => HouseBook.Context(HouseBook.Lesson(Club.Iron, readings))))
            {
                var all = PatternEvaluator.Evaluate(book, lesson);
                var near = index.Near(lesson, network.Fire(lesson));
                Assert.Equal(all.Where(m => near.Any(n => n.Pattern == m.Pattern)).Select(Said), near.Select(Said));
                Assert.All(all.Where(m => m.Holds || m.IsNearMiss || m.HoldsUp), m => Assert.Contains(near, n => n.Pattern == m.Pattern));
            }
        }, iter: Drafted.Lessons);

    [Fact]
    public void Looked_at_quickly_a_pattern_is_near_exactly_when_one_thing_at_most_is_against_it_or_only_readings_are_missing() =>
        Gen.Select(Books, Readings.Array[6]).Sample((patterns, lessons) =>
        {
            var book = HouseBook.With(patterns);
            var network = PatternNetwork.Compile(book);
            var quick = patterns.Select(p => new QuickLook(p, m => book.Find(m)?.Row ?? -1)).ToList();
            foreach (var lesson in lessons.Select(readings => HouseBook.Context(HouseBook.Lesson(Club.Iron, readings))))
            {
                var (fired, matches) = (network.Fire(lesson), PatternEvaluator.Evaluate(book, lesson).ToDictionary(m => m.Pattern.Id));
                foreach (var look in quick)
                {
                    var match = matches[look.Parts.Pattern.Id];
                    var against = match.Objections.Count(o => o != Objection.NothingModerate);
                    Assert.Equal(against == 0 || (against == 1 && match.Missing.Count == 0), look.IsNear(lesson, fired));
                }
            }
        }, iter: Drafted.Lessons);

    private static string Said(PatternMatch match) =>
        $"{match.Pattern.Id.Value} {match.Holds}: {string.Join(", ", match.Matched.Select(f => f.Measure.Id.Value))}; {string.Join(", ", match.Missing.Select(m => m.Value))}; {string.Join(", ", match.Passed.Select(m => m.Value))}; {string.Join(", ", match.Against)}";
}
