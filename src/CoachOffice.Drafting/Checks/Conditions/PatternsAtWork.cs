using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Checks.Algebra;
using CoachOffice.Drafting.Checks.Examples;
using CoachOffice.Drafting.Patterns;

namespace CoachOffice.Drafting.Checks.Conditions;

/// <summary>The regions in which the patterns of a book fire, by club, worked out once for all checks.</summary>
internal sealed class PatternsAtWork
{
    private readonly List<FiringRegion> _firing;
    private readonly Lazy<List<FiringRegion>> _moved;
    private readonly Dictionary<PatternId, IReadOnlyList<Region>> _known = [];
    private readonly KnownAnswers _answers;
    private readonly Grounds _grounds;

    public PatternsAtWork(RuleBase rules, KnownAnswers? answers = null)
    {
        (_answers, _grounds) = (answers ?? new KnownAnswers(), new Grounds(rules.Book));
        Rules = rules;
        Examples = new ExampleOf(rules);
        _firing = [.. Enum.GetValues<Club>().Select(club => new FiringRegion(rules.Of(club)))];
        _moved = new(() => [.. from age in rules.Ages from level in Enum.GetValues<Domain.Students.Level>() from club in Enum.GetValues<Club>() select new FiringRegion(rules.Of(club, age, level))]);
    }

    public RuleBase Rules { get; }

    public ExampleOf Examples { get; }

    /// <summary>The answer to a question about where patterns fire; of the patterns and measures named, everything may matter to it that <see cref="Grounds"/> tells, and nothing else.</summary>
    public T Answer<T>(string question, Func<T> work, params IReadOnlyList<Pattern> patterns)
        where T : notnull => _answers.Of($"{question} {string.Concat(patterns.Select(_grounds.Of))}", work);

    /// <summary>Where a pattern fires for a grown-up, a region for each club.</summary>
    public IReadOnlyList<Region> Of(Pattern pattern)
    {
        if (!_known.TryGetValue(pattern.Id, out var known)) _known.Add(pattern.Id, known = [.. _firing.Select(f => f.Of(pattern))]);
        return known;
    }

    /// <summary>The firing for a grown-up, with each club a pattern speaks of.</summary>
    public IEnumerable<FiringRegion> Firing(Pattern pattern) => _firing.Where(f => PatternEvaluator.SpeaksOf(pattern, f.Space.Club));

    /// <summary>The same for a pattern that is not quite the book's, on the clubs it speaks of.</summary>
    public IReadOnlyList<Region> Varied(Pattern pattern) => [.. Firing(pattern).Select(f => f.Build(pattern))];

    /// <summary>A pattern, also one that is not quite the book's, fires with some club; if for no grown-up improver, then for a student whose ranges have moved with age or level.</summary>
    public bool CanFire(Pattern pattern) => Answer("can fire", () => Fires(pattern), pattern);

    private bool Fires(Pattern pattern) => Firing(pattern).Any(f => !f.Build(pattern).IsEmpty) || _moved.Value.Any(f => PatternEvaluator.SpeaksOf(pattern, f.Space.Club) && !f.Build(pattern).IsEmpty);

    /// <summary>Where both fire, a region for each club.</summary>
    public IReadOnlyList<Region> Together(Pattern one, Pattern other) => [.. Of(one).Zip(Of(other), (a, b) => a.And(b))];

    /// <summary>Both may fire in one lesson.</summary>
    public bool Meet(Pattern one, Pattern other) => Answer("meet", () => Of(one).Zip(Of(other)).Any(pair => pair.First.Meets(pair.Second)), one, other);

    /// <summary>Both may fire in one lesson that has a fault.</summary>
    public bool MeetWith(FaultId fault, Pattern one, Pattern other) => Answer($"meet with {fault} {_grounds.Of(fault.Measure)}", () => Together(one, other).Any(r => !r.Out(fault).IsEmpty), one, other);

    /// <summary>The other fires wherever this one does.</summary>
    public bool Implies(Pattern narrow, Pattern wide) => Answer("implies", () => Inside(Of(narrow), Of(wide)), narrow, wide);

    private static bool Inside(IReadOnlyList<Region> narrow, IReadOnlyList<Region> wide) => narrow.Zip(wide).All(pair => pair.First.IsInside(pair.Second));

    /// <summary>Everything a pattern explains.</summary>
    public static IEnumerable<FaultId> Explained(Pattern pattern) => pattern.Explains.Concat(pattern.ExplainsIfPresent);

    /// <summary>An anomaly of patterns.</summary>
    public Anomaly Found(AnomalyKind kind, AnomalySeverity severity, string sentence, LessonFacts? example, params IReadOnlyList<Pattern> patterns) =>
        new() { Kind = kind, Severity = severity, Entries = [.. patterns.Select(Rules.Place)], Sentence = sentence, Example = example };
}
