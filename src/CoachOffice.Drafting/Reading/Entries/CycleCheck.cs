using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading.Entries;

/// <summary>Finds circles among references of one kind and prints each of them once.</summary>
internal sealed class CycleCheck(string what)
{
    private readonly SortedDictionary<string, SortedDictionary<string, Node>> _edges = new(StringComparer.Ordinal);
    private readonly HashSet<string> _done = new(StringComparer.Ordinal);

    /// <summary>Notes that one thing refers to another, and where that is written.</summary>
    public void Add(string from, string to, Node node)
    {
        if (!_edges.TryGetValue(from, out var ends)) _edges.Add(from, ends = new SortedDictionary<string, Node>(StringComparer.Ordinal));
        ends.TryAdd(to, node);
    }

    /// <summary>Adds a fault for each circle, at the reference that closes it.</summary>
    public void Report(FaultList faults)
    {
        foreach (var start in _edges.Keys) Walk(start, faults);
    }

    // Without recursion: a long chain must not end the process.
    private void Walk(string start, FaultList faults)
    {
        if (!_done.Add(start)) return;
        var way = new List<string> { start };
        var open = new Stack<IEnumerator<KeyValuePair<string, Node>>>([Ends(start)]);
        while (open.TryPeek(out var ends))
        {
            if (!ends.MoveNext())
            {
                open.Pop().Dispose();
                way.RemoveAt(way.Count - 1);
                continue;
            }

            var (next, node) = ends.Current;
            var circle = way.IndexOf(next);
            if (circle >= 0) faults.Add(node, $"{what} in a circle: {string.Join(" -> ", way.Skip(circle).Append(next))}; take one link out");
            if (!_done.Add(next)) continue;
            way.Add(next);
            open.Push(Ends(next));
        }
    }

    private IEnumerator<KeyValuePair<string, Node>> Ends(string from) =>
        _edges.TryGetValue(from, out var ends) ? ends.GetEnumerator() : Enumerable.Empty<KeyValuePair<string, Node>>().GetEnumerator();
}
