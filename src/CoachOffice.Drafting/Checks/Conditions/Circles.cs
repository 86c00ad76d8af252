namespace CoachOffice.Drafting.Checks.Conditions;

/// <summary>Finds the shortest circle through each thing among references of one kind.</summary>
internal static class Circles
{
    /// <summary>Each circle once, as the things on it from the least one, which is not repeated at the end. <paramref name="edges"/> may hold doubles.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> In(IEnumerable<(string From, string To)> edges)
    {
        var next = edges.Where(e => e.From != e.To).Distinct().OrderBy(e => e.To, StringComparer.Ordinal).ToLookup(e => e.From, e => e.To, StringComparer.Ordinal);
        var found = new SortedDictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal);
        foreach (var start in next.Select(n => n.Key).Order(StringComparer.Ordinal))
        {
            if (Shortest(start, next) is not { } circle) continue;
            var least = circle.IndexOf(circle.Min(StringComparer.Ordinal)!);
            List<string> turned = [.. circle.Skip(least), .. circle.Take(least)];
            found.TryAdd(string.Join(' ', turned), turned);
        }

        return [.. found.Values];
    }

    private static List<string>? Shortest(string start, ILookup<string, string> next)
    {
        var before = new Dictionary<string, string>(StringComparer.Ordinal);
        var open = new Queue<string>([start]);
        while (open.TryDequeue(out var at))
        {
            foreach (var to in next[at])
            {
                if (to == start) return Way(start, at, before);
                if (before.TryAdd(to, at)) open.Enqueue(to);
            }
        }

        return null;
    }

    private static List<string> Way(string start, string last, Dictionary<string, string> before)
    {
        var way = new List<string>();
        for (var at = last; at != start; at = before[at]) way.Add(at);
        way.Add(start);
        way.Reverse();
        return way;
    }
}
