using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Reading.Entries;

/// <summary>Reads <c>train-after</c>: which work waits for which.</summary>
internal sealed class TrainAfterEntries(Shelf shelf)
{
    private readonly CycleCheck _waits = new("the work waits");
    private readonly HashSet<(MeasureId, MeasureId)> _seen = [];

    /// <summary>All sound entries, by the measure that waits.</summary>
    public IReadOnlyList<TrainAfter> Read()
    {
        var found = shelf.ReadAll("train-after", One)
            .OrderBy(t => t.Work.Value, StringComparer.Ordinal).ThenBy(t => t.After[0].Value, StringComparer.Ordinal).ToList();
        _waits.Report(shelf.Faults);
        return found;
    }

    private TrainAfter? One(Entry entry)
    {
        var work = entry.Require("work") is { } node ? shelf.Ids.Measure(node, shelf.Faults) : MeasureId.From("?");
        var after = entry.Distinct(entry.SomeItems("after"), shelf.Ids.Measure);
        var because = entry.Text("because");
        if (!entry.Sound) return null;
        foreach (var first in after)
        {
            _waits.Add(work.Value, first.Value, entry.Find("after")!);
            if (!_seen.Add((work, first))) shelf.Faults.Add(entry.Find("after")!, $"{work.Value} waits for {first.Value} already; write it once");
        }

        return new TrainAfter(work, after, because);
    }
}
