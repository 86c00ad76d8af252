using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>Which of several bookings that overlap stands beside which: each gets a lane of its own, as few lanes as can be.</summary>
public static class Lanes
{
    /// <summary>For each interval, in the order given: its lane from 0, and how many lanes its cluster has. Half-open: what only meets shares a lane.</summary>
    public static IReadOnlyList<Lane> Of(IReadOnlyList<Interval> times)
    {
        ArgumentNullException.ThrowIfNull(times);
        var lanes = new Lane[times.Count];
        var cluster = new List<int>();
        var ends = new List<Instant>();
        foreach (var next in Enumerable.Range(0, times.Count).OrderBy(i => times[i].Start).ThenByDescending(i => times[i].End).ThenBy(i => i))
        {
            if (ends.Count > 0 && ends.TrueForAll(end => end <= times[next].Start)) Close(lanes, cluster, ends);
            var free = ends.FindIndex(end => end <= times[next].Start);
            if (free < 0) (free, _) = (ends.Count, Add(ends));
            ends[free] = times[next].End;
            lanes[next] = new Lane(free, 0);
            cluster.Add(next);
        }

        Close(lanes, cluster, ends);
        return lanes;
    }

    private static int Add(List<Instant> ends)
    {
        ends.Add(Instant.MinValue);
        return ends.Count;
    }

    private static void Close(Lane[] lanes, List<int> cluster, List<Instant> ends)
    {
        foreach (var one in cluster) lanes[one] = lanes[one] with { Count = ends.Count };
        cluster.Clear();
        ends.Clear();
    }
}
