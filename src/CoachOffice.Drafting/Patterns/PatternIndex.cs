using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Patterns;

/// <summary>
/// Finds the patterns that hold or nearly do without holding every pattern against the lesson: a draft hears only of those for which a finding at least moderate speaks,
/// so each is looked up by the measures that can speak for it, and given up at the second thing against it.
/// </summary>
internal sealed class PatternIndex
{
    private const int Bits = 64;

    private readonly QuickLook[] _patterns;
    private readonly int[][] _byRow;

    public PatternIndex(Rulebook book)
    {
        var rows = book.Measures.ToDictionary(m => m.Id, m => m.Row);
        _patterns = [.. book.Patterns.OrderBy(p => p.Precedence).ThenBy(p => p.Id.Value, StringComparer.Ordinal).Select(p => new QuickLook(p, m => rows.GetValueOrDefault(m, -1)))];
        _byRow = [.. Enumerable.Range(0, book.Measures.Count).Select(row => Enumerable.Range(0, _patterns.Length).Where(i => _patterns[i].CanSpeak(row)).ToArray())];
    }

    /// <summary>The patterns that hold or nearly do, held against the lesson, by precedence, then id.</summary>
    public IReadOnlyList<PatternMatch> Near(LessonContext lesson, IReadOnlyList<Pattern> fired)
    {
        var suspects = new ulong[(_patterns.Length + Bits - 1) / Bits];
        foreach (var finding in lesson.Findings)
        {
            if (finding.Weight < 2 || finding.Measure.Row >= _byRow.Length) continue;
            foreach (var i in _byRow[finding.Measure.Row]) suspects[i / Bits] |= 1UL << (i % Bits);
        }

        var near = new List<PatternMatch>();
        Func<PatternId, bool> fires = id => QuickLook.Holds(id, fired);
        for (var word = 0; word < suspects.Length; word++)
        {
            for (var left = suspects[word]; left != 0; left &= left - 1)
            {
                var pattern = _patterns[(word * Bits) + System.Numerics.BitOperations.TrailingZeroCount(left)];
                if (pattern.IsNear(lesson, fired)) near.Add(PatternEvaluator.Weigh(pattern.Parts, new ConditionTest(lesson, pattern.Parts.Pattern, fires)));
            }
        }

        return near;
    }
}
