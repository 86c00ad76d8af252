using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Causes;

/// <summary>Which of the fired patterns stand (A3 of the ordering): one that rivals another and is named under its `over` gives way.</summary>
internal static class StandingPatterns
{
    /// <summary>The standing patterns, in the order given (precedence, then id).</summary>
    public static IReadOnlyList<StandingPattern> Of(IReadOnlyList<Pattern> fired, LessonAtHand at)
    {
        var standing = fired.Select(p => Found(p, at)).OfType<StandingPattern>().ToList();
        foreach (var strong in standing.ToList())
        {
            if (!standing.Contains(strong)) continue;
            foreach (var weak in standing.Where(w => w != strong && strong.Pattern.Over.Contains(w.Pattern.Id) && strong.Rivals(w)).ToList())
            {
                standing.Remove(weak);
                at.Trace.Add("causes:over", $"{strong.Pattern.Id.Value} over {weak.Pattern.Id.Value}");
            }
        }

        return standing;
    }

    private static StandingPattern? Found(Pattern pattern, LessonAtHand at)
    {
        var roots = pattern.Root.Where(f => at.Lesson.Out(f) is not null).ToList();
        if (roots.Count == 0) return null;
        var explained = pattern.Explains.Concat(pattern.ExplainsIfPresent).Where(f => f != roots[0] && at.Lesson.Out(f) is not null).Distinct().Order();
        return new StandingPattern(pattern, roots[0], [.. explained]);
    }
}
