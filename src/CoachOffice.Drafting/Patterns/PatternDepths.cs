using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Patterns;

/// <summary>How many links of `unless: pattern ...` stand below each pattern. Those with fewer fire first, so a rule is never fired that a later one would have ruled out.</summary>
internal sealed class PatternDepths
{
    private readonly Dictionary<PatternId, Pattern> _patterns;
    private readonly Dictionary<PatternId, int> _depths = [];

    public PatternDepths(IReadOnlyList<Pattern> patterns) => _patterns = patterns.ToDictionary(p => p.Id);

    public int Of(Pattern pattern) => Depth(pattern, []);

    private int Depth(Pattern pattern, HashSet<PatternId> above)
    {
        if (_depths.TryGetValue(pattern.Id, out var known)) return known;
        if (!above.Add(pattern.Id)) throw new InvalidOperationException($"Pattern '{pattern.Id.Value}' rules itself out in a circle.");
        var below = pattern.Unless.SelectMany(Named).Where(_patterns.ContainsKey).Select(id => Depth(_patterns[id], above) + 1);
        var depth = below.DefaultIfEmpty(0).Max();
        above.Remove(pattern.Id);
        return _depths[pattern.Id] = depth;
    }

    /// <summary>The patterns a condition under `unless` names.</summary>
    public static IEnumerable<PatternId> Named(Condition condition) => condition switch
    {
        FiredCondition fired => [fired.Pattern],
        AnyOfCondition any => any.Any.SelectMany(Named),
        _ => [],
    };
}
