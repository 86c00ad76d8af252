using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading.Own;

/// <summary>Lays a practice's own files over the shipped ones: an own entry hides the shipped one of its kind and id, a removed one goes with what only served it.</summary>
internal sealed class OwnChanges
{
    private readonly Dictionary<EntryId, Node> _shipped = [];
    private readonly Dictionary<EntryId, Node> _written = [];
    private readonly Dictionary<EntryId, OwnLine> _removed;
    private readonly Dictionary<EntryId, OwnLine> _replaced;
    private readonly FaultList _faults;

    public OwnChanges(IReadOnlyList<MapNode> shipped, IReadOnlyList<MapNode> own, FaultList faults)
    {
        _faults = faults;
        var lines = new OwnList(faults);
        _removed = lines.Read(own, "removed");
        _replaced = lines.Read(own, "replaced");
        if (own.Count == 0) return;
        Collect(shipped, _shipped);
        Collect(own, _written);
    }

    /// <summary>What is the practice's own, each with the mark of the shipped entry as it was when it was changed.</summary>
    public OwnRules Rules() => new(
        [.. _written.Keys.Order().Select(id => new OwnEntry(id, WasOf(id, _replaced)))],
        [.. _removed.Keys.Order().Select(id => new OwnEntry(id, WasOf(id, _removed)))]);

    /// <summary>True for an entry that was taken away.</summary>
    public bool IsRemoved(EntryId id) => _removed.ContainsKey(id);

    /// <summary>True for a shipped entry that is no part of the resulting book.</summary>
    public bool Hides(EntryKind kind, Node node)
    {
        if (EntryLists.IdOf(kind, node) is not { } id) return false;
        return _written.ContainsKey(id) || _removed.ContainsKey(id) || (kind == EntryKind.Case && IsOfRemoved((MapNode)node));
    }

    /// <summary>The entry without what names a removed one: a drill leaves the ladders, a pattern its neighbours, a caution the drills.</summary>
    public Node Pruned(EntryKind kind, Node node) => _removed.Count == 0 || node is not MapNode map ? node : new Pruning(_removed.Keys, _faults).Of(kind, map);

    /// <summary>Faults of changes that no longer fit the shipped book, and a word where it was changed since.</summary>
    public void Check()
    {
        foreach (var (id, line) in _removed) CheckRemoved(id, line);
        foreach (var (id, line) in _replaced) CheckReplaced(id, line);
    }

    private void CheckRemoved(EntryId id, OwnLine line)
    {
        if (_written.TryGetValue(id, out var own)) _faults.Add(line.Place, $"{id} is removed here and written in {own.At.File}:{own.At.Line}; keep one of the two");
        else if (!_shipped.ContainsKey(id)) _faults.Add(line.Place, $"{id} is not in the shipped rulebook, so there is nothing to remove; take this line out{Nearest(id)}");
        else Compare(id, line);
    }

    private void CheckReplaced(EntryId id, OwnLine line)
    {
        if (!_written.TryGetValue(id, out var own)) _faults.Add(line.Place, $"no entry of your own stands for {id}; write it or take this line out{Nearest(id)}");
        else if (!_shipped.ContainsKey(id)) _faults.Add(own, $"{id} was removed from the shipped rulebook; keep it as an entry of your own (take it out of 'replaced') or drop the change");
        else Compare(id, line);
    }

    private void Compare(EntryId id, OwnLine line)
    {
        if (line.Was is { } was && was != EntryMark.Of(_shipped[id])) _faults.Warn(line.Place, $"the shipped {id} has changed since you changed it; compare the two");
    }

    private string Nearest(EntryId id) =>
        Words.Nearest(id.Key, _shipped.Keys.Where(other => other.Kind == id.Kind).Select(other => other.Key)) is { } near ? $"; nearest: {near}" : "";

    private string? WasOf(EntryId id, Dictionary<EntryId, OwnLine> lines) =>
        lines.GetValueOrDefault(id)?.Was ?? (_shipped.TryGetValue(id, out var node) ? EntryMark.Of(node) : null);

    private bool IsOfRemoved(MapNode one) => EntryLists.Word(one.Find("pattern")) is { } pattern && _removed.ContainsKey(new EntryId(EntryKind.Pattern, pattern));

    private static void Collect(IReadOnlyList<MapNode> roots, Dictionary<EntryId, Node> entries)
    {
        foreach (var kind in Enum.GetValues<EntryKind>())
        {
            foreach (var node in roots.Select(root => root.Find(EntryLists.NameOf(kind))).OfType<Node>())
            {
                if (EntryLists.IsSingle(kind)) entries.TryAdd(new EntryId(kind, Terms.Of(kind)), node);
                else if (node is ListNode list) Collect(kind, list, entries);
            }
        }
    }

    private static void Collect(EntryKind kind, ListNode list, Dictionary<EntryId, Node> entries)
    {
        foreach (var item in list.Items)
        {
            if (EntryLists.IdOf(kind, item) is { } id) entries.TryAdd(id, item);
        }
    }
}
