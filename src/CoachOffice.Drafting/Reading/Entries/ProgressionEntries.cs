using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading.Entries;

/// <summary>Reads <c>progressions</c>: which drills, in which order, take a fault from the first slow rehearsal to play.</summary>
internal sealed class ProgressionEntries(Shelf shelf)
{
    private readonly FaultSyntax _faults = new(shelf);
    private readonly Dictionary<FaultId, Node> _served = [];

    /// <summary>Where a progression stands.</summary>
    public Dictionary<ProgressionId, Node> Places { get; } = [];

    /// <summary>All sound progressions, by id.</summary>
    public IReadOnlyList<Progression> Read() => [.. shelf.ReadAll("progressions", One).OrderBy(p => p.Id.Value, StringComparer.Ordinal)];

    private Progression One(Entry entry)
    {
        var id = ProgressionId.From(entry.Require("id") is { } node ? Single.NewId(node, shelf.Faults) : "?");
        var faults = _faults.List(entry, entry.SomeItems("faults"));
        var progression = new Progression
        {
            Id = id,
            Name = entry.Text("name"),
            Faults = faults,
            Rungs = [.. Enum.GetValues<Stage>().Select(stage => Rung(entry, stage, faults)).OfType<Rung>()],
        };
        Places[id] = entry.Map;
        foreach (var fault in faults.Where(fault => !_served.TryAdd(fault, entry.Map)))
            shelf.Faults.Add(entry.Find("faults")!, $"{fault} has a progression in {_served[fault].At.File}:{_served[fault].At.Line}; one fault, one progression");
        if (progression.Rungs.Count == 0 && entry.Sound) shelf.Faults.Add(entry.Map, $"no stage has drills; write one of: {string.Join(", ", Terms.All<Stage>())}");
        return progression;
    }

    private Rung? Rung(Entry entry, Stage stage, IReadOnlyList<FaultId> faults)
    {
        var name = Terms.Of(stage);
        if (entry.Find(name) is null) return null;
        var items = entry.SomeItems(name);
        var drills = entry.Distinct(items, shelf.Ids.Drill);
        foreach (var item in items) Check(item, stage, faults);
        return new Rung(stage, drills);
    }

    private void Check(Node item, Stage stage, IReadOnlyList<FaultId> faults)
    {
        if (item is not ScalarNode { Text.Length: > 0 } id || !shelf.Drills.TryGetValue(DrillId.From(id.Text), out var drill)) return;
        if (!drill.Stages.Contains(stage))
            shelf.Faults.Add(item, $"the drill {id.Text} is for {string.Join(", ", drill.Stages.Select(s => Terms.Of(s)))}, not for {Terms.Of(stage)}");
        if (stage >= Stage.Mix) return;
        foreach (var fault in faults.Where(fault => !drill.Trains.Contains(fault)))
            shelf.Faults.Add(item, $"the drill {id.Text} does not train {fault}; add it to the drill's 'trains' or take the drill out");
        foreach (var fault in faults.Where(drill.Opposites.Contains))
            shelf.Faults.Add(item, $"the drill {id.Text} pushes {fault} further out; take it out");
    }
}
