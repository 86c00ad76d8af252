using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Reading.Entries;

/// <summary>Reads <c>adjustments</c>: ranges that move from some age on.</summary>
internal sealed class AdjustmentEntries(Shelf shelf)
{
    private readonly HashSet<(MeasureId, int)> _seen = [];

    /// <summary>All sound adjustments, by measure and age.</summary>
    public IReadOnlyList<RangeAdjustment> Read() =>
        [.. shelf.ReadAll("adjustments", One).OrderBy(a => a.Measure.Value, StringComparer.Ordinal).ThenBy(a => a.FromAge)];

    private RangeAdjustment One(Entry entry)
    {
        var adjustment = new RangeAdjustment
        {
            Measure = entry.Require("measure") is { } node ? shelf.Ids.Measure(node, shelf.Faults) : MeasureId.From("?"),
            FromAge = entry.Whole("from-age", 1, 120),
            LowBy = entry.NumberIf("low-by") ?? 0,
            HighBy = entry.NumberIf("high-by") ?? 0,
            Source = entry.Source(),
        };
        if (!entry.Sound) return adjustment;
        if (adjustment is { LowBy: 0, HighBy: 0 }) shelf.Faults.Add(entry.Map, "this moves no edge; write low-by or high-by");
        if (!_seen.Add((adjustment.Measure, adjustment.FromAge))) shelf.Faults.Add(entry.Map, $"{adjustment.Measure.Value} from age {adjustment.FromAge} is adjusted twice");
        return adjustment;
    }
}
