using CoachOffice.Domain.Plans;
using NRules;

namespace CoachOffice.Drafting.Patterns;

/// <summary>All patterns of a rulebook as one compiled rule network: immutable, for any number of drafts and threads.</summary>
internal sealed class PatternNetwork
{
    private readonly ISessionFactory _factory;
    private readonly Dictionary<string, Pattern> _byRule;
    private readonly bool _asksTheLesson;

    private readonly KnownTests _tests;

    private PatternNetwork(ISessionFactory factory, KnownTests tests, IReadOnlyList<Pattern> patterns, bool asksTheLesson)
    {
        _factory = factory;
        _tests = tests;
        _byRule = patterns.ToDictionary(p => PatternRule.NameOf(p.Id), StringComparer.Ordinal);
        _asksTheLesson = asksTheLesson;
    }

    /// <summary>Compiles the patterns in order of their ids. Two of one id, or patterns that rule each other out in a circle, throw: the reader refuses both.</summary>
    /// <param name="book">The rulebook.</param>
    /// <param name="like">The network of a rulebook that is much the same: what it tests too need not be compiled again.</param>
    public static PatternNetwork Compile(Rulebook book, PatternNetwork? like = null)
    {
        var tests = new KnownTests(like?._tests);
        var facts = new FaultFacts(book);
        var sorted = book.Patterns.OrderBy(p => p.Id.Value, StringComparer.Ordinal).ToList();
        var compiler = new RuleCompiler(new RuleCompilerOptions { UnsupportedExpressionHandling = RuleCompilerUnsupportedExpressionsHandling.TreatAsNotEqual })
        {
            ExpressionCompiler = tests,
        };
        return new PatternNetwork(compiler.Compile(sorted.Select(p => PatternRule.Build(p, facts))), tests, sorted, sorted.Exists(p => facts.Of(p).Count == 0));
    }

    /// <summary>The patterns that hold in a lesson, by precedence, then id. All facts go in before anything fires: a pattern's `unless` never sees half a lesson.</summary>
    public IReadOnlyList<Pattern> Fire(LessonContext lesson)
    {
        // No pattern holds without a finding that is at least moderate.
        if (!lesson.Findings.Any(f => f.Weight >= 2)) return [];
        var session = _factory.CreateSession();
        var fired = new List<Pattern>();
        session.Events.RuleFiredEvent += (_, firing) => fired.Add(_byRule[firing.Rule.Name]);
        session.InsertAll(Facts(lesson));
        var most = _byRule.Count + 1;
        if (session.Fire(most) == most) throw new InvalidOperationException($"The patterns did not settle in {most} firings.");
        return [.. fired.OrderBy(p => p.Precedence).ThenBy(p => p.Id.Value, StringComparer.Ordinal)];
    }

    /// <summary>The findings out of range; anything else is asked of the lesson itself.</summary>
    private List<object> Facts(LessonContext lesson)
    {
        List<object> facts = _asksTheLesson ? [lesson] : [];
        foreach (var finding in lesson.Findings) if (finding.IsOut) facts.Add(new SeenFinding(lesson, finding));
        return facts;
    }
}
