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
        var match = Weigh(new PatternParts(pattern), test);
        known[pattern.Id] = match;
        return match;
    }

    /// <summary>A pattern held against a lesson by a test of its own.</summary>
    internal static PatternMatch Weigh(PatternParts parts, ConditionTest test)
    {
        var (seen, passed) = (new MatchNotes(), new MatchNotes());
        List<Objection>? against = null;
        foreach (var part in parts.When) if (test.Of(part.Condition!, seen) == Truth.No) (against ??= []).Add(part);
        foreach (var part in parts.Needs) if (test.Of(part.Condition!, seen) == Truth.No) (against ??= []).Add(part);
        foreach (var part in parts.Unless) if (test.OfExclusion(part.Condition!, passed) == Truth.Yes) (against ??= []).Add(part);
        if (against is null && seen.Missing.Count == 0 && !seen.Matched.Any(f => f.Weight >= 2)) against = [Objection.NothingModerate];
        seen.SortByRow();
        return new PatternMatch
        {
            Pattern = parts.Pattern,
            Holds = against is null && seen.Missing.Count == 0,
            Matched = seen.Matched,
            Missing = seen.Missing,
            Passed = passed.Missing,
            Objections = against ?? [],
        };
    }
}
