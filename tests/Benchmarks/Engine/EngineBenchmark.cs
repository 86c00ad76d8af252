using System.Globalization;
using System.Runtime.CompilerServices;
using CoachOffice.Benchmarks.Drafting;
using CoachOffice.Benchmarks.Measuring;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting;
using CoachOffice.Drafting.Patterns;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Words;

namespace CoachOffice.Benchmarks.Engine;

/// <summary>A draft with trace and near-misses at 12, 100 and 1,000 generated patterns, by the rule engine and by a program written by hand for just these patterns; and the matching alone by RulesEngine.</summary>
internal sealed class EngineBenchmark
{
    private const int Lessons = 300;
    private const int Rounds = 21;

    // Patterns; ratio wanted at most and aimed at; kilobytes a draft wanted at most.
    private static readonly IReadOnlyList<(int Patterns, int Most, int Aim, int Kilobytes)> Sizes = [(12, 6, 4, 45), (100, 10, 5, 175), (1_000, 20, 8, 730)];

    private readonly CompiledRulebook _book;
    private readonly HandProgram _hand;
    private readonly RulesEngineProgram _other;
    private readonly IReadOnlyList<LessonFacts> _lessons;
    private readonly Dictionary<LessonFacts, LessonContext> _contexts;

    private EngineBenchmark(CompiledRulebook book)
    {
        (_book, _hand, _other) = (book, new HandProgram(book.Book), new RulesEngineProgram(book.Book));
        _lessons = new SomeLessons(book.Book, new Random(2026)).Take(Lessons);
        _contexts = _lessons.ToDictionary(f => f, f => new LessonContext(f.Club, LessonGrading.Grade(book.Book, f)), EqualityComparer<LessonFacts>.Create(ReferenceEquals, RuntimeHelpers.GetHashCode));
    }

    public static async Task Run(TextWriter output)
    {
        var shipped = RulebookText.FromDirectory(Path.Combine(Checkout.Root, "rules")).Value;
        await output.WriteLineAsync($"{Lessons} random lessons of 6 to 40 readings at each size, {Rounds} rounds by turns after one to warm up; median (least to most). Load average before: {LoadAverage.Now}.\n");
        foreach (var size in Sizes)
        {
            var benchmark = new EngineBenchmark(CompiledRulebook.Compile(RulebookReader.Load(new GeneratedRules(shipped).Only(size.Patterns)).Value));
            await output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"### {size.Patterns:N0} patterns\n\n{benchmark.Compare()}\n"));
            await benchmark.Measure(output, size);
        }

        await output.WriteLineAsync($"Load average after: {LoadAverage.Now}.");
    }

    /// <summary>Nothing is timed before every draft is the same by both, byte for byte, and RulesEngine names the same patterns.</summary>
    private string Compare()
    {
        var (fired, near) = (0, 0);
        foreach (var facts in _lessons)
        {
            var draft = Drafter.Draft(_book, facts);
            fired += draft.Trace.Count(t => t.Rule.StartsWith("pattern:", StringComparison.Ordinal));
            near += draft.Trace.Count(t => t.Rule.StartsWith("near-miss:", StringComparison.Ordinal));
            if (!DraftJson.Write(draft).AsSpan().SequenceEqual(DraftJson.Write(Drafter.Draft(_book, facts, _hand.Judge)))) throw new InvalidOperationException("The two drafts differ.");
            var ours = _book.Fire(_contexts[facts]).Select(p => p.Id.Value).Order(StringComparer.Ordinal);
            if (!ours.SequenceEqual(_other.Fire(_contexts[facts]).Order(StringComparer.Ordinal))) throw new InvalidOperationException("RulesEngine names other patterns.");
        }

        return string.Create(CultureInfo.InvariantCulture, $"All {Lessons} drafts byte-identical by both, RulesEngine names the same patterns; a lesson has {fired / (double)Lessons:0.0} patterns that fire and {near / (double)Lessons:0.0} near-misses.");
    }

    private async Task Measure(TextWriter output, (int Patterns, int Most, int Aim, int Kilobytes) wanted)
    {
        var (hand, engine) = (new Course("draft, patterns by hand", f => Drafter.Draft(_book, f, _hand.Judge)), new Course("**draft, patterns by the rule engine**", f => Drafter.Draft(_book, f)));
        var (handPart, enginePart) = (new Course("only the patterns, by hand", f => Patterns(f, _hand.Judge)), new Course("only the patterns, by the rule engine", f => Patterns(f, _book.Judge)));
        var (session, other) = (new Course("only which fire, by NRules", f => _book.Fire(_contexts[f])), new Course("only which fire, by RulesEngine 6.0.1", f => _other.Fire(_contexts[f])));
        Course.ByTurns(_lessons, Rounds, hand, engine, handPart, enginePart, session, other);
        await Course.Print(output, hand, engine, handPart, enginePart, session, other);
        await output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"- Draft, engine to hand: **{Sample.Ratio(engine.Micros, hand.Micros).Text("0.00")}**, wanted at most {wanted.Most}, aimed below {wanted.Aim}; {new Sample(engine.Kilobytes).Median:0} KB a draft, wanted at most {wanted.Kilobytes}."));
        await output.WriteLineAsync($"- Only the patterns with trace and near-misses, engine to hand: {Sample.Ratio(enginePart.Micros, handPart.Micros).Text("0.00")}.");
        await output.WriteLineAsync($"- Only which fire, NRules to RulesEngine: {Sample.Ratio(session.Micros, other.Micros).Text("0.00")}; the whole of the patterns with trace and near-misses to RulesEngine: {Sample.Ratio(enginePart.Micros, other.Micros).Text("0.00")}.\n");
    }

    private void Patterns(LessonFacts facts, Func<LessonContext, Judged> judge)
    {
        var (fired, matches) = judge(_contexts[facts]);
        PatternTrace.Write(new TraceLog(), fired, matches);
    }
}
