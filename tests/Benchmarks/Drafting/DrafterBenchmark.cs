using System.Diagnostics;
using System.Runtime.CompilerServices;
using CoachOffice.Benchmarks.Measuring;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting;
using CoachOffice.Drafting.Patterns;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.Benchmarks.Drafting;

/// <summary>Drafts by the rule engine against the same drafter with the plain evaluator's word for which patterns fire, by the shipped rulebook.</summary>
internal sealed class DrafterBenchmark
{
    private const int Lessons = 400;
    private const int Rounds = 25;

    private readonly CompiledRulebook _book;
    private readonly IReadOnlyList<LessonFacts> _lessons;

    private DrafterBenchmark(CompiledRulebook book)
    {
        _book = book;
        _lessons = new SomeLessons(book.Book, new Random(2026)).Take(Lessons);
    }

    public static async Task Run(TextWriter output)
    {
        var text = RulebookText.FromDirectory(Path.Combine(Checkout.Root, "rules")).Value;
        var benchmark = new DrafterBenchmark(CompiledRulebook.Compile(RulebookReader.Load(text).Value));
        benchmark.Compare();
        await benchmark.Whole(output);
        await benchmark.Parts(output);
        await benchmark.Threads(output);
        await Compiling(output, text);
    }

    private Draft ByEngine(LessonFacts facts) => Drafter.Draft(_book, facts);

    private Draft ByHand(LessonFacts facts) => Drafter.Draft(_book, facts, lesson => Judged(PatternEvaluator.Evaluate(_book.Book, lesson)));

    private static Judged Judged(IReadOnlyList<PatternMatch> matches) => new([.. matches.Where(m => m.Holds).Select(m => m.Pattern)], matches);

    private void Compare()
    {
        foreach (var facts in _lessons)
        {
            if (!DraftJson.Write(ByEngine(facts)).AsSpan().SequenceEqual(DraftJson.Write(ByHand(facts)))) throw new InvalidOperationException("The two drafts differ.");
        }
    }

    private async Task Whole(TextWriter output)
    {
        var (engine, hand) = (new Course("rule engine", f => ByEngine(f)), new Course("by hand", f => ByHand(f)));
        Course.ByTurns(_lessons, Rounds, engine, hand);
        await output.WriteLineAsync($"{Lessons} random lessons of 6 to 40 readings, {_book.Book.Patterns.Count} patterns, all {Lessons} drafts byte-identical by both ways; {Rounds} rounds by turns; median (least to most).\n");
        await Course.Print(output, hand, engine);
        await output.WriteLineAsync($"Ratio of time: **{Sample.Ratio(engine.Micros, hand.Micros).Text("0.00")}**.\n");
    }

    /// <summary>Where the time of a draft goes.</summary>
    private async Task Parts(TextWriter output)
    {
        var contexts = _lessons.ToDictionary(f => f, f => new LessonContext(f.Club, LessonGrading.Grade(_book.Book, f)), EqualityComparer<LessonFacts>.Create(ReferenceEquals, RuntimeHelpers.GetHashCode));
        var evaluator = new Course("plain evaluator alone", f => PatternEvaluator.Evaluate(_book.Book, contexts[f]));
        var session = new Course("engine session alone", f => _book.Fire(contexts[f]));
        var grading = new Course("grading alone", f => LessonGrading.Grade(_book.Book, f));
        var writing = new Course("draft by hand and its JSON", f => DraftJson.Text(ByHand(f)));
        Course.ByTurns(_lessons, Rounds, evaluator, session, grading, writing);
        await Course.Print(output, evaluator, session, grading, writing);
        await output.WriteLineAsync($"Session against evaluator: {Sample.Ratio(session.Micros, evaluator.Micros).Text("0.00")}.\n");
    }

    private async Task Threads(TextWriter output)
    {
        List<double> one = [], two = [];
        for (var round = 0; round < Rounds; round++)
        {
            one.Add(await Rate(1));
            two.Add(await Rate(2));
        }

        await output.WriteLineAsync($"Drafts a second by the engine: one thread {new Sample(one).Text("0")}, two threads {new Sample(two).Text("0")}, ratio {Sample.Ratio(two, one).Text("0.00")}.\n");
    }

    private async Task<double> Rate(int threads)
    {
        var from = Stopwatch.GetTimestamp();
        await Task.WhenAll(Enumerable.Range(0, threads).Select(_ => Task.Factory.StartNew(
            () => _lessons.Sum(f => ByEngine(f).Trace.Count), CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default)));
        return threads * Lessons / Stopwatch.GetElapsedTime(from).TotalSeconds;
    }

    private static Task Compiling(TextWriter output, RulebookText text)
    {
        List<double> reading = [], compiling = [];
        for (var round = 0; round < Rounds; round++)
        {
            var from = Stopwatch.GetTimestamp();
            var loaded = RulebookReader.Load(text).Value;
            reading.Add(Stopwatch.GetElapsedTime(from).TotalMilliseconds);
            from = Stopwatch.GetTimestamp();
            CompiledRulebook.Compile(loaded);
            compiling.Add(Stopwatch.GetElapsedTime(from).TotalMilliseconds);
        }

        return output.WriteLineAsync($"Warm: reading and checking the rulebook {new Sample(reading).Text("0.0")} ms, compiling its patterns {new Sample(compiling).Text("0.0")} ms.");
    }
}
