using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Causes;
using CoachOffice.Drafting.Drills;

namespace CoachOffice.Drafting.Ordering;

/// <summary>Step D of the ordering: the first candidate with a usable drill, perhaps a second, and the reason why each other one waits.</summary>
internal sealed class FocusPick
{
    private readonly LessonAtHand _at;
    private readonly TrainAfterLaws _laws;
    private readonly CauseGraph _graph;
    private readonly IReadOnlyList<Candidate> _ordered;
    private readonly Ladders _ladders;
    private readonly Week _week;
    private readonly List<Skipped> _skipped = [];
    private readonly List<DraftWithheld> _withheld = [];

    public FocusPick(LessonAtHand at, TrainAfterLaws laws, CauseGraph graph, IReadOnlyList<Candidate> ordered)
    {
        _at = at;
        _laws = laws;
        _graph = graph;
        _ordered = ordered;
        _ladders = new Ladders(at, new Withholding(at, [.. graph.Standing.SelectMany(s => s.Pattern.Forbids).Distinct()]));
        _week = Week.Of(at.Facts, at.Book.Dosage);
    }

    public Picked Pick()
    {
        if (First() is not { } first) return new Picked([], Park([]), _withheld, _skipped);
        if (Second(first) is not { } second)
        {
            var alone = Keep(first, _week, []);
            return new Picked([alone], Park([alone]), _withheld, _skipped);
        }

        IReadOnlyList<Focus> both = [Keep(first, _week.First, []), Keep(second, _week.Second, [first.Fault])];
        return new Picked(both, Park(both), _withheld, _skipped);
    }

    /// <summary>None of them is picked: each waits with its reason.</summary>
    public Picked Wait() => new([], Park([]), [], []);

    private Candidate? First()
    {
        foreach (var candidate in _ordered)
        {
            var ladder = _ladders.For(candidate, _week);
            if (ladder.IsUsable) return Chosen("pick:focus-1", candidate);
            Skip(candidate, ladder);
        }

        return null;
    }

    private Candidate? Second(Candidate first)
    {
        if (WhyOnlyOne(first) is { } why)
        {
            _at.Trace.Add("pick:one-focus", why);
            return null;
        }

        foreach (var candidate in _ordered.Where(c => c != first && _skipped.All(s => s.Candidate != c)))
        {
            if (WhyNotBeside(first, candidate) is { } reason) _at.Trace.Add("pick:skip", $"{candidate.Fault}: {reason}");
            else if (_ladders.For(candidate, _week.Second) is { IsUsable: false } none)
                Skip(candidate, none);
            else return Chosen("pick:focus-2", candidate);
        }

        return null;
    }

    private string? WhyOnlyOne(Candidate first)
    {
        var student = _at.Facts.Student;
        if (first.IsProvisional) return "the focus is provisional";
        if (student.Level == Level.Beginner) return "level beginner";
        if (_at.Facts.Age < 13) return "under 13";
        if (student.Limits.Any(l => l.Status == LimitStatus.Current)) return "a current limit";
        return _week.HasRoomForTwo(_at.Book.Dosage) && _ladders.For(first, _week.First).IsUsable ? null : "no time for two";
    }

    private string? WhyNotBeside(Candidate first, Candidate second)
    {
        if (first.Reach.Contains(second.Fault)) return $"reached from {first.Fault}";
        if (Unmet(second).Where(f => f.Fault != first.Fault).Select(f => f.Fault).FirstOrDefault() is { } waits) return $"waits for {waits}";
        return Forbids(first, second) || Forbids(second, first) ? $"opposite to {first.Fault}" : null;
    }

    private static bool Forbids(Candidate one, Candidate other) => one.Pattern?.Forbids.Contains(other.Fault) == true;

    /// <summary>Findings still out that a law or a pattern puts before this fault, nearest law first.</summary>
    private List<Finding> Unmet(Candidate candidate)
    {
        var unmet = new List<Finding>();
        foreach (var measure in _laws.AllBefore(candidate.Finding.Measure.Id))
            if (_at.Lesson.Find(measure) is { IsOut: true } finding && finding.Fault != candidate.Fault && !_graph.IsGripAlone(finding)) unmet.Add(finding);
        foreach (var finding in _at.Lesson.Findings)
            if (finding.IsOut && _graph.ComesBefore(finding.Fault!.Value, candidate.Fault) && !unmet.Contains(finding)) unmet.Add(finding);
        return unmet;
    }

    private Candidate Chosen(string rule, Candidate candidate)
    {
        _at.Trace.Add(rule, candidate.IsProvisional ? $"{candidate.Fault} provisional" : candidate.Fault.ToString());
        return candidate;
    }

    private void Skip(Candidate candidate, Ladder none)
    {
        _withheld.AddRange(none.Withheld);
        _skipped.Add(new Skipped(candidate, none));
        _at.Trace.Add("pick:skip", $"{candidate.Fault}: no usable drill");
    }

    private Focus Keep(Candidate candidate, Week week, IReadOnlyList<FaultId> chosen)
    {
        var ladder = _ladders.For(candidate, week);
        _withheld.AddRange(ladder.Withheld);
        return new Focus(candidate, ladder, [.. Unmet(candidate).Select(f => f.Fault!.Value).Intersect(chosen)]);
    }

    private List<DraftParked> Park(IReadOnlyList<Focus> focuses)
    {
        var parked = _ordered.Where(c => focuses.All(f => f.Candidate != c)).Select(Reason).ToList();
        _at.Trace.Add("park", [.. parked.Select(p => $"{p.Fault} {Domain.Terms.Of(p.Reason)}{(p.By is { } by ? $" {by}" : "")}")]);
        return parked;
    }

    private DraftParked Reason(Candidate candidate)
    {
        if (_skipped.Any(s => s.Candidate == candidate)) return new DraftParked(candidate.Fault, ParkedReason.NoDrill, null);
        return Unmet(candidate).FirstOrDefault() is { } before
            ? new DraftParked(candidate.Fault, ParkedReason.TrainAfter, before.Fault)
            : new DraftParked(candidate.Fault, ParkedReason.LimitOfTwo, null);
    }
}
