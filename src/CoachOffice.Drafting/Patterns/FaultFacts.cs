using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Patterns;

/// <summary>
/// Which findings out of range the rule engine joins for each pattern of a book, and in which order. Every draft pays for each different first one, whether it is there or not,
/// and for the others only where it is; so as few different ones as possible come first.
/// </summary>
internal sealed class FaultFacts
{
    private readonly Dictionary<MeasureId, int> _rows;
    private readonly Dictionary<(int Row, Side Side), int> _asked;
    private readonly HashSet<(int Row, Side Side)> _first;
    private readonly HashSet<PatternId> _named;
    private readonly PatternDepths _depths;

    public FaultFacts(Rulebook book)
    {
        _rows = book.Measures.ToDictionary(m => m.Id, m => m.Row);
        _asked = book.Patterns.SelectMany(Faults).CountBy(fault => fault).ToDictionary();
        _first = FewestFirst([.. book.Patterns.Select(p => Faults(p).Distinct().ToList()).Where(faults => faults.Count > 0)]);
        _named = [.. book.Patterns.SelectMany(p => p.Unless).SelectMany(PatternDepths.Named)];
        _depths = new PatternDepths(book.Patterns);
    }

    /// <summary>The row of a measure; one the book does not have is in no lesson.</summary>
    public int RowOf(MeasureId measure) => _rows.GetValueOrDefault(measure, -1);

    /// <summary>How many links of `unless: pattern ...` stand below a pattern.</summary>
    public int DepthOf(Pattern pattern) => _depths.Of(pattern);

    /// <summary>Another pattern asks whether this one fired.</summary>
    public bool IsNamed(PatternId pattern) => _named.Contains(pattern);

    /// <summary>The faults that must all be there, on either side for None.</summary>
    public IReadOnlyList<(int Row, Side Side)> Of(Pattern pattern) =>
        [.. Faults(pattern).Distinct().OrderByDescending(_first.Contains).ThenByDescending(fault => _asked[fault]).ThenBy(fault => fault.Row).ThenBy(fault => fault.Side)];

    /// <summary>Faults of which every pattern has one: the only ones of some patterns, then again and again the one most of the others ask for.</summary>
    private static HashSet<(int Row, Side Side)> FewestFirst(List<List<(int Row, Side Side)>> patterns)
    {
        var first = patterns.Where(faults => faults.Count == 1).Select(faults => faults[0]).ToHashSet();
        while (patterns.Where(faults => !faults.Exists(first.Contains)).ToList() is { Count: > 0 } left)
            first.Add(left.SelectMany(faults => faults).CountBy(fault => fault).OrderByDescending(c => c.Value).ThenBy(c => c.Key.Row).ThenBy(c => c.Key.Side).First().Key);
        return first;
    }

    private IEnumerable<(int Row, Side Side)> Faults(Pattern pattern) => pattern.When.SelectMany(condition => condition switch
    {
        OutCondition c => [(RowOf(c.Measure), c.Side)],
        ValueCondition c => [(RowOf(c.Measure), c.Side)],
        SameSideCondition c => c.Measures.Select(m => (RowOf(m), Side.None)),
        _ => Enumerable.Empty<(int, Side)>(),
    });
}
