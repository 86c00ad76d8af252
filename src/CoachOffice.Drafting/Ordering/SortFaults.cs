using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting.Causes;
using CoachOffice.Drafting.Patterns;

namespace CoachOffice.Drafting.Ordering;

/// <summary>Step B of the ordering: which faults may become a focus, and why the others may not.</summary>
internal static class SortFaults
{
    /// <summary>Patternless findings want to be at least moderate.</summary>
    private const int ModerateWeight = 2;

    public static Sorted Of(LessonAtHand at, CauseGraph graph, IReadOnlyList<PatternMatch> matches)
    {
        List<PatternMatch> open = [.. matches.Where(m => m.HoldsUp)];
        List<Candidate> candidates = [], undecided = [];
        List<DraftParked> parked = [];
        foreach (var finding in at.Lesson.Findings.Where(f => f.Fault is not null))
        {
            var fault = finding.Fault!.Value;
            if (ReasonToPark(finding, at, graph) is { } reason) parked.Add(reason);
            else if (graph.PatternOf(fault) is { } root) candidates.Add(new Candidate(fault, finding, root.Pattern, graph.Reach(fault)));
            else if (open.Exists(m => IsConsequence(m, fault))) undecided.Add(new Candidate(fault, finding, null, graph.Reach(fault), IsProvisional: true));
            else candidates.Add(new Candidate(fault, finding, null, graph.Reach(fault)));
        }

        parked.AddRange(NoFaultSides(at));
        return new Sorted(candidates, undecided, parked);
    }

    /// <summary>A pattern would explain this fault if it held.</summary>
    public static bool IsConsequence(PatternMatch match, FaultId fault) =>
        (match.Pattern.Explains.Contains(fault) || match.Pattern.ExplainsIfPresent.Contains(fault)) && !match.Pattern.Root.Contains(fault);

    private static DraftParked? ReasonToPark(Finding finding, LessonAtHand at, CauseGraph graph)
    {
        var fault = finding.Fault!.Value;
        if (!finding.IsOut) return new DraftParked(fault, ParkedReason.Borderline, null);
        if (graph.CauseOf(fault) is { } cause) return new DraftParked(fault, ParkedReason.ExplainedBy, cause.From);
        if (graph.PatternOf(fault) is not null) return null;
        if (finding.IsDerived && PartThatIsOut(finding, at) is { } part) return new DraftParked(fault, ParkedReason.ExplainedBy, part.Fault);
        if (finding.Measure.StyleOnly) return new DraftParked(fault, ParkedReason.NoHarmShown, null);
        return finding.Weight < ModerateWeight ? new DraftParked(fault, ParkedReason.TooSmall, null) : null;
    }

    /// <summary>A derived value without a pattern is nothing beyond the part of it that is out, the way that moves it so.</summary>
    private static Finding? PartThatIsOut(Finding finding, LessonAtHand at) =>
        finding.Measure.Derived!.Parts.Select(at.Lesson.Find).OfType<Finding>().Where(p => p.IsOut && Moves(finding.Measure.Derived, p) == finding.Side).OrderByDescending(p => p.Weight).ThenBy(p => p.Measure.Row).FirstOrDefault();

    /// <summary>The side to which a part that is out pushes the whole: its own, but the other one below a fraction's line.</summary>
    private static Side Moves(Derivation whole, Finding part) =>
        whole.Kind == DerivationKind.Ratio && part.Measure.Id == whole.Parts[1] ? part.Side == Side.Low ? Side.High : Side.Low : part.Side;

    private static IEnumerable<DraftParked> NoFaultSides(LessonAtHand at) =>
        at.Lesson.NoFault.Select(fault => new DraftParked(fault, ParkedReason.NoHarmShown, null));
}
