using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading.Entries;

/// <summary>Reads <c>cases</c>: readings with which a pattern must fire, or must not.</summary>
internal sealed class CaseEntries(Shelf shelf)
{
    private readonly HashSet<(PatternId, string)> _seen = [];

    /// <summary>All sound cases, in the order of files and lines.</summary>
    public IReadOnlyList<PatternCase> Read() => shelf.ReadAll("cases", Once);

    private PatternCase Once(Entry entry)
    {
        var one = One(entry);
        if (entry.Sound && !_seen.Add((one.Pattern, one.Name))) shelf.Faults.Add(entry.Find("name")!, $"{one.Pattern.Value} has a case of this name already; give this one another");
        return one;
    }

    private PatternCase One(Entry entry) => new()
    {
        Pattern = entry.Require("pattern") is { } pattern ? shelf.Ids.Pattern(pattern, shelf.Faults) : PatternId.From("?"),
        Name = entry.Text("name"),
        Club = entry.Word<Club>("club"),
        Readings = Readings(entry),
        ClubSpeedGoal = SpeedGoal(entry),
        Fires = entry.Require("fires") is { } fires && Single.Flag(fires, shelf.Faults),
        Why = entry.Text("why"),
        File = entry.Map.At.File,
        Line = entry.Map.At.Line,
        Column = entry.Map.At.Column,
        Path = entry.Map.Path,
    };

    private List<MeasuredValue> Readings(Entry entry)
    {
        var found = new List<MeasuredValue>();
        if (entry.Require("readings") is not { } node || Entry.Of(node, shelf.Faults) is not { } readings) return found;
        foreach (var written in readings.Map.Entries)
        {
            var before = shelf.Faults.Count;
            var name = new ScalarNode(written.At, written.Value.Path, ScalarKind.Text, written.Name);
            var id = shelf.Ids.MeasureIn(name, written.Name, 0);
            var (value, count) = Value(written.Value);
            if (shelf.Faults.Count == before && shelf.Measures.TryGetValue(id, out var measure)) found.Add(Reading(measure, value, count, written.Value));
        }

        return [.. found.OrderBy(reading => reading.Measure.Value, StringComparer.Ordinal)];
    }

    private MeasuredValue Reading(Measure measure, double value, int count, Node node)
    {
        if (!measure.Plausible.Contains(value))
            shelf.Faults.Add(node, $"{Single.Show(value)} lies beyond the plausible {Single.Show(measure.Plausible)} {measure.Unit} of {measure.Id.Value}");
        return new MeasuredValue { Measure = measure.Id, Value = new Quantity(value, measure.Unit), Readings = count, Instrument = measure.Instruments[0] };
    }

    private (double Value, int Readings) Value(Node node)
    {
        if (node is not MapNode map) return (Single.Number(node, shelf.Faults), 1);
        var entry = new Entry(map, shelf.Faults);
        var value = (entry.Number("value"), entry.WholeIf("readings", 1, 1000) ?? 1);
        entry.Close();
        return value;
    }

    private static Quantity? SpeedGoal(Entry entry) => entry.NumberIf("club-speed-goal") is { } goal ? new Quantity(goal, Unit.MetrePerSecond) : null;
}
