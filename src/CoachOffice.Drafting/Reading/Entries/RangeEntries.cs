using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading.Entries;

/// <summary>Reads <c>ranges</c>: what a coach would leave alone, by measure and club.</summary>
internal sealed class RangeEntries(Shelf shelf)
{
    private readonly Dictionary<MeasureId, Position> _seen = [];

    /// <summary>All sound ranges, by measure and club.</summary>
    public IReadOnlyList<WantedRange> Read() =>
        [.. shelf.ReadAll("ranges", Several).SelectMany(r => r).OrderBy(r => r.Measure.Value, StringComparer.Ordinal).ThenBy(r => r.Club)];

    private List<WantedRange> Several(Entry entry)
    {
        var before = shelf.Faults.Count;
        var measure = entry.Require("measure") is { } node ? shelf.Ids.Measure(node, shelf.Faults) : MeasureId.From("?");
        if (before == shelf.Faults.Count) Once(measure, entry.Find("measure")!);
        var source = entry.Source();
        var card = entry.TextIf("card");
        var found = new List<WantedRange>();
        foreach (var club in Enum.GetValues<Club>())
        {
            if (entry.Find(Terms.Of(club)) is { } written) found.Add(One(written, measure, club) with { Source = source, Card = card });
        }

        if (found.Count == 0) shelf.Faults.Add(entry.Map, $"no club has a range here; write one of: {string.Join(", ", Terms.All<Club>())}");
        return found;
    }

    private void Once(MeasureId measure, Node node)
    {
        if (!_seen.TryAdd(measure, node.At)) shelf.Faults.Add(node, $"the ranges of {measure.Value} stand in {_seen[measure].File}:{_seen[measure].Line}; write them once");
        if (shelf.Measures.TryGetValue(measure, out var known) && known.Step is null)
            shelf.Faults.Add(node, $"{measure.Value} has no step, so a range would never be graded; give the measure a step or leave the range out");
    }

    private WantedRange One(Node written, MeasureId measure, Club club)
    {
        var range = new WantedRange { Measure = measure, Club = club, Limits = new Limits(null, null), Source = SourceMark.CommonPractice };
        if (written is ScalarNode { Text: "goal" }) return range with { FromGoal = true };
        if (written is not MapNode) return range with { Limits = Checked(written, measure) };
        var entry = new Entry((MapNode)written, shelf.Faults);
        var limits = entry.Require("range") is { } pair ? Checked(pair, measure) : range.Limits;
        var aim = entry.Find("aim") is { } node ? Aim(node, limits) : null;
        entry.Close();
        return range with { Limits = limits, Aim = aim };
    }

    private Limits Checked(Node pair, MeasureId measure)
    {
        var limits = Single.Pair(pair, shelf.Faults);
        if (shelf.Measures.TryGetValue(measure, out var known) && !Bounds.Inside(limits, known.Plausible))
            shelf.Faults.Add(pair, $"{Single.Show(limits)} reaches beyond the plausible {Single.Show(known.Plausible)} {known.Unit} of {measure.Value}");
        return limits;
    }

    private Limits Aim(Node node, Limits range)
    {
        var aim = Single.Pair(node, shelf.Faults);
        if (!Bounds.Inside(aim, range)) shelf.Faults.Add(node, $"the aim {Single.Show(aim)} lies outside the range {Single.Show(range)}");
        return aim;
    }
}
