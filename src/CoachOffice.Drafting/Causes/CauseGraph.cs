using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Causes;

/// <summary>What drives what in a lesson (A4 and A5 of the ordering): edges from the root of each standing pattern to what it explains, none back in time, none in a circle.</summary>
internal sealed class CauseGraph
{
    private readonly List<CauseEdge> _edges;

    private CauseGraph(IReadOnlyList<StandingPattern> standing, List<CauseEdge> edges)
    {
        Standing = standing;
        _edges = edges;
    }

    /// <summary>The standing patterns, by precedence, then id.</summary>
    public IReadOnlyList<StandingPattern> Standing { get; }

    /// <summary>The graph of these patterns.</summary>
    public static CauseGraph Of(IReadOnlyList<StandingPattern> standing, LessonAtHand at)
    {
        var edges = standing.SelectMany(s => s.Explained.Select(f => new CauseEdge(s.Root, f, s.Pattern))).ToList();
        foreach (var back in edges.Where(e => at.Out(e.To).Measure.Moment < RootMoment(at.Out(e.From).Measure)).ToList())
        {
            edges.Remove(back);
            at.Trace.Add("causes:earlier-moment", back.ToString());
        }

        var graph = new CauseGraph(standing, edges);
        graph.OpenCircles(at);
        return graph;
    }

    /// <summary>A root's moment in the ordering. Shoulders open at impact stand in for the early reading and count as the first move down.</summary>
    public static Moment RootMoment(Measure measure) => measure.Id == NamedMeasures.ImpactShouldersOpen ? Moment.EarlyDownswing : measure.Moment;

    /// <summary>The edge reported as the cause of a fault: the one of least precedence, then id; null when nothing explains it.</summary>
    public CauseEdge? CauseOf(FaultId fault)
    {
        CauseEdge? first = null;
        foreach (var edge in _edges)
            if (edge.To == fault && (first is null || IsBefore(edge, first))) first = edge;
        return first;
    }

    /// <summary>The first standing pattern with this root, or null.</summary>
    public StandingPattern? PatternOf(FaultId root)
    {
        foreach (var standing in Standing) if (standing.Root == root) return standing;
        return null;
    }

    /// <summary>A standing pattern with the first root is to be trained before one with the second.</summary>
    public bool ComesBefore(FaultId first, FaultId second)
    {
        foreach (var one in Standing)
        {
            if (one.Pattern.Before.Count == 0 || one.Root != first) continue;
            foreach (var later in Standing) if (later.Root == second && one.Pattern.Before.Contains(later.Pattern.Id)) return true;
        }

        return false;
    }

    /// <summary>A grip that no pattern speaks of is no fault: it neither holds other work up nor keeps a swing from being left alone.</summary>
    public bool IsGripAlone(Finding finding) =>
        finding.Measure.Id == NamedMeasures.LeadHandGrip && finding.Fault is { } fault && PatternOf(fault) is null && CauseOf(fault) is null;

    /// <summary>What a standing pattern explains in this lesson, ordinal.</summary>
    public IReadOnlyList<FaultId> ExplainedBy(StandingPattern pattern) => [.. _edges.Where(e => e.By.Id == pattern.Pattern.Id).Select(e => e.To).Order()];

    /// <summary>The fault itself and everything it leads to.</summary>
    public IReadOnlyList<FaultId> Reach(FaultId from)
    {
        var found = new List<FaultId> { from };
        for (var i = 0; i < found.Count; i++)
            foreach (var edge in _edges) if (edge.From == found[i] && !found.Contains(edge.To)) found.Add(edge.To);
        return found;
    }

    private static bool IsBefore(CauseEdge one, CauseEdge other) =>
        one.By.Precedence != other.By.Precedence ? one.By.Precedence < other.By.Precedence : string.CompareOrdinal(one.By.Id.Value, other.By.Id.Value) < 0;

    private void OpenCircles(LessonAtHand at)
    {
        while (_edges.Where(e => Reach(e.To).Contains(e.From)).ToList() is { Count: > 0 } circle)
        {
            var weakest = circle.OrderBy(e => e.By.Precedence).ThenBy(e => e.By.Id.Value, StringComparer.Ordinal).ThenBy(e => e.To).Last();
            _edges.Remove(weakest);
            at.Trace.Add("causes:circle", weakest.ToString());
        }
    }
}
