using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting.Causes;
using CoachOffice.Drafting.Ordering;
using CoachOffice.Drafting.Patterns;
using CoachOffice.Drafting.Words;

namespace CoachOffice.Drafting;

/// <summary>Makes the draft of a plan from a lesson: grade, find causes, put them in order, choose, offer drills, fit them to the week, explain. No clock, no chance, no culture.</summary>
public static class Drafter
{
    /// <summary>Raised by hand whenever any draft may change; a test pins the golden table to it.</summary>
    public const string Engine = "drafter/3";

    /// <summary>The draft. The same book and facts give the same draft, byte for byte, whatever the order of the readings.</summary>
    public static Draft Draft(CompiledRulebook rulebook, LessonFacts facts)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        ArgumentNullException.ThrowIfNull(facts);
        return Draft(rulebook, facts, rulebook.Judge);
    }

    /// <summary>The draft with another judge of the patterns; benchmarks hold other programs against the rule engine here.</summary>
    internal static Draft Draft(CompiledRulebook rulebook, LessonFacts facts, Func<LessonContext, Judged> judge)
    {
        var book = rulebook.Book;
        var at = LessonAtHand.Of(book, facts);

        var (fired, matches) = judge(at.Lesson);
        PatternTrace.Write(at.Trace, fired, matches);

        var graph = CauseGraph.Of(StandingPatterns.Of(fired, at), at);
        var laws = rulebook.Laws;
        var sorted = SortFaults.Of(at, graph, matches);
        var leaveIt = LeaveItLaw.Holds(at, graph);
        var picked = leaveIt ? LeaveIt(at, sorted) : Choose(at, laws, graph, sorted);

        var next = new NextReadings(at, matches, graph, laws);
        return new DraftLines(at, graph, picked).Draft(
            new DraftRulebook(book.Name, rulebook.Sha256),
            DraftLines.Focus(picked.Focuses, next),
            next.Of(picked, sorted.Undecided, leaveIt),
            sorted.Parked);
    }

    /// <summary>Undecided faults are looked at only when no candidate is left; until then they wait like the others.</summary>
    private static Picked Choose(LessonAtHand at, TrainAfterLaws laws, CauseGraph graph, Sorted sorted)
    {
        var picked = new FocusPick(at, laws, graph, InOrder(at, laws, graph, sorted.Candidates)).Pick();
        if (sorted.Undecided.Count == 0) return picked;
        var undecided = new FocusPick(at, laws, graph, InOrder(at, laws, graph, sorted.Undecided));
        return picked.And(picked.Focuses.Count == 0 ? undecided.Pick() : undecided.Wait());
    }

    private static List<Candidate> InOrder(LessonAtHand at, TrainAfterLaws laws, CauseGraph graph, IReadOnlyList<Candidate> candidates)
    {
        var keys = new KeyOfWork(at, laws, graph, candidates);
        var ordered = candidates.Select(c => (Candidate: c, Key: keys.Of(c))).OrderBy(c => c.Key).ThenBy(c => c.Candidate.Fault).ToList();
        at.Trace.Add("order:key", [.. ordered.Select(c => $"{c.Candidate.Fault} {c.Key}")]);
        return [.. ordered.Select(c => c.Candidate)];
    }

    private static Picked LeaveIt(LessonAtHand at, Sorted sorted)
    {
        at.Trace.Add("order:leave-it", "path, face and strike in range", "nothing marked");
        return new Picked([], [.. sorted.Candidates.Concat(sorted.Undecided).Select(c => new DraftParked(c.Fault, ParkedReason.NoHarmShown, null))], [], []);
    }
}
