using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>
/// Arithmetic of half-open times: the start belongs to one, the end to what follows, so that one lesson may begin where another ends. Of Allen's
/// thirteen relations (Communications of the ACM 26(11), 1983) nine overlap; before, after, meets and met-by do not.
/// </summary>
public static class HalfOpen
{
    /// <summary>True when both go on at some moment. Neither may be empty.</summary>
    public static bool Overlaps(this Interval one, Interval other) => one.Start < other.End && other.Start < one.End;

    /// <summary>True when all of the other lies within.</summary>
    public static bool Covers(this Interval one, Interval other) => one.Start <= other.Start && other.End <= one.End;

    /// <summary>What is left of a time without the holes, which may overlap, touch and come in any order.</summary>
    public static IEnumerable<Interval> Minus(this Interval whole, IEnumerable<Interval> holes)
    {
        ArgumentNullException.ThrowIfNull(holes);
        var at = whole.Start;
        foreach (var hole in holes.OrderBy(h => h.Start))
        {
            if (hole.End <= at) continue;
            if (hole.Start >= whole.End) break;
            if (hole.Start > at) yield return new Interval(at, hole.Start);
            at = hole.End;
        }

        if (at < whole.End) yield return new Interval(at, whole.End);
    }

    /// <summary>The same times without overlaps: what overlaps or touches becomes one. In order.</summary>
    public static IReadOnlyList<Interval> Joined(IEnumerable<Interval> times)
    {
        ArgumentNullException.ThrowIfNull(times);
        var joined = new List<Interval>();
        foreach (var time in times.OrderBy(t => t.Start))
        {
            if (joined.Count > 0 && joined[^1].End >= time.Start) joined[^1] = new Interval(joined[^1].Start, Instant.Max(joined[^1].End, time.End));
            else joined.Add(time);
        }

        return joined;
    }
}
