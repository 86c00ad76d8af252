using CoachOffice.Domain.Measuring;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading;

/// <summary>A mapping being read: every name asked for is a valid name, so what was never asked for is unknown when it is closed.</summary>
internal sealed class Entry
{
    private readonly SortedSet<string> _asked = new(StringComparer.Ordinal);
    private readonly int _faultsBefore;

    public Entry(MapNode map, FaultList faults)
    {
        Map = map;
        Faults = faults;
        _faultsBefore = faults.Count;
    }

    public MapNode Map { get; }

    public FaultList Faults { get; }

    /// <summary>True while nothing was wrong since the entry was opened.</summary>
    public bool Sound => Faults.Count == _faultsBefore;

    /// <summary>Opens a mapping, or says that one is expected.</summary>
    public static Entry? Of(Node node, FaultList faults)
    {
        if (node is MapNode map) return new Entry(map, faults);
        faults.Add(node, $"a mapping (name: value) is expected, not {node.Kind}");
        return null;
    }

    /// <summary>The value under a name; null when it is missing or written as null.</summary>
    public Node? Find(string name)
    {
        _asked.Add(name);
        return Map.Find(name) is { } node and not ScalarNode { Scalar: ScalarKind.Nothing } ? node : null;
    }

    /// <summary>The value under a name, or a fault at the entry.</summary>
    public Node? Require(string name)
    {
        var node = Find(name);
        if (node is null) Faults.Add(Map, $"'{name}' is missing here");
        return node;
    }

    public string Text(string name) => Require(name) is { } node ? Single.Text(node, Faults) : "?";

    public string? TextIf(string name) => Find(name) is { } node ? Single.Text(node, Faults) : null;

    public double Number(string name) => Require(name) is { } node ? Single.Number(node, Faults) : 0;

    public double? NumberIf(string name) => Find(name) is { } node ? Single.Number(node, Faults) : null;

    public int Whole(string name, int least, int most) => Require(name) is { } node ? Single.Whole(node, least, most, Faults) : least;

    public int? WholeIf(string name, int least, int most) => Find(name) is { } node ? Single.Whole(node, least, most, Faults) : null;

    public bool Flag(string name) => Find(name) is { } node && Single.Flag(node, Faults);

    public T Word<T>(string name)
        where T : struct, Enum => Require(name) is { } node ? Single.Word<T>(node, Faults) : default;

    public T? WordIf<T>(string name)
        where T : struct, Enum => Find(name) is { } node ? Single.Word<T>(node, Faults) : null;

    /// <summary>Items of a list; a missing list is empty.</summary>
    public IReadOnlyList<Node> ItemsIf(string name) => Find(name) is { } node ? Items(node) : [];

    /// <summary>Items of a list that must be there.</summary>
    public IReadOnlyList<Node> Items(string name) => Require(name) is { } node ? Items(node) : [];

    /// <summary>Items of a list that must be there and hold something.</summary>
    public IReadOnlyList<Node> SomeItems(string name)
    {
        if (Require(name) is not { } node) return [];
        var items = Items(node);
        if (node is ListNode { Items.Count: 0 }) Faults.Add(node, $"'{name}' needs at least one item");
        return items;
    }

    /// <summary>Words of a closed list, none of them twice.</summary>
    public IReadOnlyList<T> Words<T>(string name)
        where T : struct, Enum => Distinct(SomeItems(name), Single.Word<T>);

    /// <summary>Words of a closed list, none of them twice; empty when missing.</summary>
    public IReadOnlyList<T> WordsIf<T>(string name)
        where T : struct, Enum => Distinct(ItemsIf(name), Single.Word<T>);

    /// <summary>Reads every item and refuses the second of two equal ones.</summary>
    public IReadOnlyList<T> Distinct<T>(IReadOnlyList<Node> items, Func<Node, FaultList, T> read)
    {
        var seen = new List<T>();
        foreach (var item in items)
        {
            var before = Faults.Count;
            var value = read(item, Faults);
            if (Faults.Count > before) continue;
            if (seen.Contains(value)) Faults.Add(item, "this stands in the list already; leave it out");
            else seen.Add(value);
        }

        return seen;
    }

    /// <summary>Where the entry's numbers come from; nothing or "common practice" is the trade's, unpublished.</summary>
    public SourceMark Source() => TextIf("source") switch
    {
        null or "common practice" => SourceMark.CommonPractice,
        var citation => new SourceMark(IsPublished: true, citation),
    };

    /// <summary>Names never asked for are faults, with the nearest valid name.</summary>
    public void Close()
    {
        foreach (var entry in Map.Entries.Where(e => !_asked.Contains(e.Name)))
            Faults.Add(entry.At, entry.Value.Path, $"{Reading.Words.Quote(entry.Name)} is not a name known here{Reading.Words.Right(entry.Name, _asked)}");
    }

    private IReadOnlyList<Node> Items(Node node)
    {
        if (node is ListNode list) return list.Items;
        Faults.Add(node, $"a list [..] is expected, not {node.Kind}");
        return [];
    }
}
