using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Replay;

/// <summary>Which patterns two books hold otherwise, and which of them say something else once they count.</summary>
internal sealed class PatternDifference
{
    // What a pattern looks at is compared lesson by lesson; its name and reasons for the reader never reach these parts of a draft.
    private static readonly string[] Looks = [nameof(Pattern.When), nameof(Pattern.Needs), nameof(Pattern.Unless), nameof(Pattern.Clubs)];
    private static readonly string[] Unread = [nameof(Pattern.Name), nameof(Pattern.Rationale), nameof(Pattern.Debatable), nameof(Pattern.Source)];

    public PatternDifference(Rulebook inForce, Rulebook edited)
    {
        foreach (var id in inForce.Patterns.Concat(edited.Patterns).Select(p => p.Id).Distinct())
        {
            var (before, after) = (inForce.Find(id), edited.Find(id));
            if (before is not null && after is not null && Text(before, Unread) == Text(after, Unread)) continue;
            Changed.Add(id);
            if (before is null || after is null || Text(before, [.. Looks, .. Unread]) != Text(after, [.. Looks, .. Unread])) SaysElse.Add(id);
        }
    }

    /// <summary>Added, removed or changed.</summary>
    public HashSet<PatternId> Changed { get; } = [];

    /// <summary>Those that a draft reads otherwise whenever they count.</summary>
    public HashSet<PatternId> SaysElse { get; } = [];

    /// <summary>The measures whose being out can make a pattern count: without one of them out nothing speaks for it.</summary>
    public static IEnumerable<MeasureId> SpeakingFor(Pattern pattern) => pattern.When.SelectMany(SpeakingFor);

    private static IEnumerable<MeasureId> SpeakingFor(Condition condition) => condition switch
    {
        OutCondition c => [c.Measure],
        ValueCondition c => [c.Measure],
        SameSideCondition c => c.Measures,
        AnyOfCondition c => c.Any.SelectMany(SpeakingFor),
        _ => [],
    };

    private static string Text(Pattern pattern, IReadOnlyList<string> without) => DefinitionText.Of(pattern, without);
}
