namespace CoachOffice.Drafting.Reading.Nodes;

/// <summary>A mapping from names to values, in the order of the file; every name once.</summary>
internal sealed class MapNode(Position at, string path) : Node(at, path)
{
    private readonly List<MapEntry> _entries = [];
    private readonly Dictionary<string, MapEntry> _byName = new(StringComparer.Ordinal);

    public IReadOnlyList<MapEntry> Entries => _entries;

    public override string Kind => "a mapping";

    public Node? Find(string name) => _byName.TryGetValue(name, out var entry) ? entry.Value : null;

    /// <summary>Adds an entry, or a fault when the name is there already: the later one would silently win.</summary>
    public void Add(MapEntry entry, FaultList faults)
    {
        if (_byName.TryAdd(entry.Name, entry))
        {
            _entries.Add(entry);
            return;
        }

        var first = _byName[entry.Name].At;
        faults.Add(entry.At, entry.Value.Path, $"{Words.Quote(entry.Name)} is written twice, first in line {first.Line}; keep one of them");
    }
}
