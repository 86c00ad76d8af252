using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting.Checks.Algebra;

namespace CoachOffice.Drafting.Checks.Examples;

/// <summary>Finds the smallest lesson of a region whose draft shows what was claimed of the region. Only the drafter is believed.</summary>
internal sealed class ExampleOf(RuleBase rules)
{
    /// <summary>More boxes than this are not tried.</summary>
    private const int MostTried = 200;

    /// <summary>The smallest lesson found in the regions, or null.</summary>
    public LessonFacts? In(IEnumerable<Region> regions, Func<Draft, bool> shows)
    {
        bool Shows(LessonFacts facts) => shows(rules.Draft(facts));
        return regions.SelectMany(r => r.Pieces()).Take(MostTried).OrderBy(b => b.NamedCount)
            .Select(box => SmallestLesson.Of(LessonInBox.Plainest(box), Shows)).OfType<LessonFacts>().FirstOrDefault();
    }

    /// <summary>The smallest lesson of these.</summary>
    public LessonFacts? Among(IEnumerable<LessonFacts> lessons, Func<Draft, bool> shows) =>
        lessons.Select(lesson => SmallestLesson.Of(lesson, facts => shows(rules.Draft(facts)))).OfType<LessonFacts>().FirstOrDefault();

    /// <summary>These patterns fire.</summary>
    public static Func<Draft, bool> Fires(params IReadOnlyList<Pattern> patterns) =>
        draft => patterns.All(p => draft.Trace.Any(t => t.Rule == $"pattern:{p.Id.Value}"));

    /// <summary>The pattern is kept from firing by this one thing only.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="objection">As the trace says it, e.g. <c>unless: pattern sway</c>.</param>
    public static Func<Draft, bool> NearlyFires(Pattern pattern, string objection) =>
        draft => draft.Trace.Any(t => t.Rule == $"near-miss:{pattern.Id.Value}" && t.Facts.Contains(objection));

    /// <summary>The pattern is kept from firing by one thing only.</summary>
    public static Func<Draft, bool> NearlyFires(Pattern pattern) =>
        draft => draft.Trace.Any(t => t.Rule == $"near-miss:{pattern.Id.Value}");
}
