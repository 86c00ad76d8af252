using System.Collections.Concurrent;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>The last few things of a kind that somebody asked for, so that they need not be made anew. For any number of threads; two that ask at once may both make it.</summary>
/// <param name="most">So many are kept; the one not asked for longest goes first.</param>
internal sealed class LastAsked<T>(int most)
    where T : class
{
    private readonly ConcurrentDictionary<string, Used> _known = new(StringComparer.Ordinal);
    private long _asked;

    public T? Find(string key)
    {
        if (!_known.TryGetValue(key, out var used)) return null;
        used.Last = Interlocked.Increment(ref _asked);
        return used.Value;
    }

    public T Keep(string key, T value)
    {
        _known[key] = new Used(value) { Last = Interlocked.Increment(ref _asked) };
        while (_known.Count > most) _known.TryRemove(_known.MinBy(k => k.Value.Last).Key, out _);
        return value;
    }

    private sealed record Used(T Value)
    {
        public long Last { get; set; }
    }
}
