using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Patterns;

/// <summary>Evaluates patterns in plain C#, over the same conditions the rule engine is built from: it finds near-misses, runs the cases beside the rules, and is the engine's oracle in tests.</summary>
public static class PatternEvaluator
{
    /// <summary>Every pattern of the book that speaks of this club, by precedence, then id.</summary>
    public static IReadOnlyList<PatternMatch> Evaluate(Rulebook book, LessonContext lesson)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(lesson);
        var known = new Dictionary<PatternId, PatternMatch>();
        return [.. book.Patterns.Where(p => SpeaksOf(p, lesson.Club)).OrderBy(p => p.Precedence).ThenBy(p => p.Id.Value, StringComparer.Ordinal).Select(p => Match(book, p, lesson, known))];
    }

    /// <summary>One pattern of the book, whatever clubs it speaks of.</summary>
    internal static PatternMatch Evaluate(Rulebook book, Pattern pattern, LessonContext lesson) => Match(book, pattern, lesson, []);

    /// <summary>True when the pattern is for this club.</summary>
    public static bool SpeaksOf(Pattern pattern, Club club)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        return pattern.Clubs.Count == 0 || pattern.Clubs.Contains(club);
    }

    /// <summary>One pattern of the book, and those its `unless` names; null when the book has none of this id or it does not speak of this club.</summary>
    internal static PatternMatch? Match(Rulebook book, PatternId id, LessonContext lesson) =>
        book.Find(id) is { } pattern && SpeaksOf(pattern, lesson.Club) ? Match(book, pattern, lesson, []) : null;

    private static PatternMatch Match(Rulebook book, Pattern pattern, LessonContext lesson, Dictionary<PatternId, PatternMatch> known)
    {
        if (known.TryGetValue(pattern.Id, out var done)) return done;
        var test = new ConditionTest(lesson, pattern, id => book.Find(id) is { } other && SpeaksOf(other, lesson.Club) && Match(book, other, lesson, known).Holds);
        var match = Weigh(pattern, test, lesson);
        known[pattern.Id] = match;
        return match;
    }

    private static PatternMatch Weigh(Pattern pattern, ConditionTest test, LessonContext lesson)
    {
        var when = pattern.When.Select(test.Of).ToList();
        var needs = pattern.Needs.Select(m => test.Of(new StateCondition(m, MeasureState.InRange))).ToList();
        var unless = pattern.Unless.Select(test.OfExclusion).ToList();
        var matched = when.SelectMany(t => t.Matched).Distinct().OrderBy(f => f.Measure.Row).ToList();
        var missing = when.Concat(needs).Where(t => t.Truth == Truth.Unmeasured).SelectMany(t => t.Missing).Distinct().ToList();
        var against = Against(when.Concat(needs), unless).ToList();
        if (against.Count == 0 && missing.Count == 0 && !matched.Any(f => f.Weight >= 2)) against.Add(Objection.NothingModerate);
        return new PatternMatch
        {
            Pattern = pattern,
            Holds = against.Count == 0 && missing.Count == 0,
            Matched = matched,
            Missing = missing,
            Passed = [.. unless.Where(t => t.Truth == Truth.Unmeasured).SelectMany(t => t.Missing).Distinct()],
            Objections = against,
        };
    }

    private static IEnumerable<Objection> Against(IEnumerable<Tested> wanted, IEnumerable<Tested> unless) =>
        wanted.Where(t => t.Truth == Truth.No).Select(t => new Objection(t.Condition, IsExclusion: false))
            .Concat(unless.Where(t => t.Truth == Truth.Yes).Select(t => new Objection(t.Condition, IsExclusion: true)));
}
