using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;

namespace CoachOffice.Drafting.Reading.Entries;

/// <summary>Reads <c>adjustments</c>: ranges that move from some age on, or for some levels.</summary>
internal sealed class AdjustmentEntries(Shelf shelf)
{
    private readonly HashSet<(MeasureId, int, string)> _seen = [];

    /// <summary>All sound adjustments, by measure and age.</summary>
    public IReadOnlyList<RangeAdjustment> Read() =>
        [.. shelf.ReadAll("adjustments", One).OrderBy(a => a.Measure.Value, StringComparer.Ordinal).ThenBy(a => a.FromAge).ThenBy(Levels, StringComparer.Ordinal)];

    private RangeAdjustment One(Entry entry)
    {
        var levels = entry.WordsIf<Level>("levels");
        var adjustment = new RangeAdjustment
        {
            Measure = entry.Require("measure") is { } node ? shelf.Ids.Measure(node, shelf.Faults) : MeasureId.From("?"),
            FromAge = (levels.Count > 0 ? entry.WholeIf("from-age", 1, 120) : entry.Whole("from-age", 1, 120)) ?? 0,
            Levels = levels.Count > 0 ? [.. levels.Order()] : null,
            LowBy = entry.NumberIf("low-by") ?? 0,
            HighBy = entry.NumberIf("high-by") ?? 0,
            Source = entry.Source(),
        };
        if (!entry.Sound) return adjustment;
        if (adjustment is { LowBy: 0, HighBy: 0 }) shelf.Faults.Add(entry.Map, "this moves no edge; write low-by or high-by");
        if (!_seen.Add((adjustment.Measure, adjustment.FromAge, Levels(adjustment))))
            shelf.Faults.Add(entry.Map, $"{adjustment.Measure.Value} from age {adjustment.FromAge}{(adjustment.Levels is null ? "" : $" for {Levels(adjustment)}")} is adjusted twice");
        return adjustment;
    }

    private static string Levels(RangeAdjustment adjustment) => string.Join(", ", (adjustment.Levels ?? []).Select(level => Terms.Of(level)));
}
