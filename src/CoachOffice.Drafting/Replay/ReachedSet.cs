using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Replay;

/// <summary>Collects reached values, one entry for each measure and club, the widest that was asked for.</summary>
internal sealed class ReachedSet
{
    // Edges are rounded to 1e-9 when grading; a margin far above that keeps the database's comparison on the safe side.
    private const double Margin = 1e-6;
    private static readonly int AllClubs = Enum.GetValues<Club>().Length;
    private readonly Dictionary<(MeasureId Measure, Club Club), Limits?> _outside = [];

    /// <summary>Any value.</summary>
    public void Any(MeasureId measure, Club club) => _outside[(measure, club)] = null;

    /// <summary>Values beyond these edges.</summary>
    public void Beyond(MeasureId measure, Club club, Limits edges)
    {
        if (edges is { Low: null, High: null }) return;
        var wide = new Limits(edges.Low + Margin, edges.High - Margin);
        if (!_outside.TryGetValue((measure, club), out var known)) _outside.Add((measure, club), wide);
        else if (known is not null) _outside[(measure, club)] = new Limits(Widest(known.Low, wide.Low, Math.Max), Widest(known.High, wide.High, Math.Min));
    }

    /// <summary>Ordered; a measure reached with any value under every club is one entry.</summary>
    public IReadOnlyList<ReachedValues> All() =>
        [.. _outside.GroupBy(o => o.Key.Measure).OrderBy(g => g.Key.Value, StringComparer.Ordinal).SelectMany(Entries)];

    private static IEnumerable<ReachedValues> Entries(IGrouping<MeasureId, KeyValuePair<(MeasureId Measure, Club Club), Limits?>> measure) =>
        measure.Count() == AllClubs && measure.Select(o => o.Value).Distinct().Count() == 1
            ? [new ReachedValues(measure.Key, null, measure.First().Value)]
            : measure.OrderBy(o => o.Key.Club).Select(o => new ReachedValues(measure.Key, o.Key.Club, o.Value));

    private static double? Widest(double? one, double? other, Func<double, double, double> wider) =>
        one is { } a && other is { } b ? wider(a, b) : one ?? other;
}
