using System.Globalization;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting.Causes;
using CoachOffice.Drafting.Drills;
using CoachOffice.Drafting.Ordering;
using CoachOffice.Drafting.Patterns;

namespace CoachOffice.Drafting.Words;

/// <summary>Which reading to take next, and what it would decide; each measure once, the most telling reason first.</summary>
internal sealed class NextReadings(LessonAtHand at, IReadOnlyList<PatternMatch> matches, CauseGraph graph, TrainAfterLaws laws)
{
    /// <summary>Of readings that nothing waits for; a longer list is not read (own judgement).</summary>
    private const int MostSuggestions = 2;

    private readonly List<DraftMeasureNext> _next = [];

    public IReadOnlyList<DraftMeasureNext> Of(Picked picked, IReadOnlyList<Candidate> undecided, bool leaveIt)
    {
        foreach (var focus in picked.Focuses.Where(f => f.Candidate.IsProvisional)) Decides(focus.Candidate.Fault);
        if (!leaveIt) Causes(picked, undecided);
        foreach (var finding in at.Lesson.Findings.Where(f => f.Grade == Grade.Borderline && !f.IsDerived)) AtTheEdge(finding);
        if (!leaveIt && picked is { Focuses.Count: 0, Withheld.Count: 0 }) Flight();
        return _next;
    }

    private void Causes(Picked picked, IReadOnlyList<Candidate> undecided)
    {
        LookAgain();
        Passed();
        var telling = matches.Where(m => m.IsNearMiss && m.Missing.Count == 1 && WouldTell(m)).ToLookup(m => m.Pattern.Unread == UnreadReadings.Suggest);
        foreach (var match in telling[false].Concat(telling[true].Take(MostSuggestions))) Open(match);
        foreach (var candidate in undecided.Where(u => picked.Focuses.All(f => f.Candidate.Fault != u.Fault))) Open(Undecided(candidate.Fault).First());
        foreach (var focus in picked.Focuses) Earlier(focus.Candidate);
    }

    /// <summary>The unread facts that would say whether something stands behind this fault, of the nearest pattern first.</summary>
    public Measure Deciding(FaultId fault) => at.Book.Find(Undecided(fault).First().Missing[0])!;

    private void Decides(FaultId fault)
    {
        foreach (var match in Undecided(fault)) Open(match);
    }

    private IEnumerable<PatternMatch> Undecided(FaultId fault) =>
        matches.Where(m => m.HoldsUp && SortFaults.IsConsequence(m, fault)).OrderBy(m => m.Missing.Count);

    /// <summary>One more reading is worth the trouble where it could name a cause for a fault that has none, or settle what a fault without a pattern belongs to.</summary>
    private bool WouldTell(PatternMatch match)
    {
        foreach (var finding in at.Lesson.Findings) if (IsNewlyExplained(match, finding)) return true;
        foreach (var root in match.Pattern.Root)
            if (at.Lesson.Out(root) is { Weight: >= 2 } && graph.PatternOf(root) is null && graph.CauseOf(root) is null) return true;
        return false;
    }

    /// <summary>By row.</summary>
    private IEnumerable<Finding> NewlyExplained(PatternMatch match) => at.Lesson.Findings.Where(f => IsNewlyExplained(match, f));

    private bool IsNewlyExplained(PatternMatch match, Finding finding) =>
        finding.Weight >= 2 && SortFaults.IsConsequence(match, finding.Fault!.Value) && graph.CauseOf(finding.Fault!.Value) is null;

    private void Open(PatternMatch match)
    {
        var behind = NewlyExplained(match).Select(f => Sentences.LowerFirst(f.Measure.Name)).ToList();
        var because = behind.Count > 0
            ? $"Would show whether \"{match.Pattern.Name}\" stands behind {Sentences.Listed(behind)}."
            : $"Would show whether \"{match.Pattern.Name}\" is what happens here.";
        foreach (var measure in match.Missing) Add(measure, because);
    }

    private void Passed()
    {
        foreach (var match in matches.Where(m => graph.Standing.Any(s => s.Pattern.Id == m.Pattern.Id)))
            foreach (var measure in match.Passed)
                Add(measure, $"Was not read; it could rule out \"{match.Pattern.Name}\".");
    }

    private void Earlier(Candidate candidate)
    {
        foreach (var measure in laws.Before(candidate.Finding.Measure.Id).Where(m => at.Lesson.Find(m) is null))
            Add(measure, $"Comes before {Sentences.LowerFirst(candidate.Finding.Measure.Name)} when it is out, and was not read. {laws.Because(candidate.Finding.Measure.Id, measure)}");
    }

    private void AtTheEdge(Finding finding)
    {
        var taken = at.Facts.Readings.First(r => r.Measure == finding.Measure.Id);
        Add(finding.Measure.Id, AtTheEdge(finding, taken));
    }

    private string AtTheEdge(Finding finding, MeasuredValue taken)
    {
        if (new GradingContext(at.Book, at.Facts).NeedsHeight(finding.Measure)) return "Lies outside, but under 15 a length counts only beside a height; adding the height would settle it.";
        if (GradingContext.IsSlowVideo(finding.Measure, taken)) return "Lies outside, but impact was read from fewer than 100 frames a second; faster video would settle it.";
        return ReadingsNeeded.ToSettle(finding, ReadingError.Of(finding.Measure, taken)) is { } more
            ? string.Create(CultureInfo.InvariantCulture, $"Lies at the edge; {more} more {(more == 1 ? "swing" : "swings")} would settle it.")
            : "Lies at the edge, and the set-up of the reading is the limit: more care with camera and marks would help, more swings would not.";
    }

    /// <summary>Two pieces of work that changed nothing: read again before working harder.</summary>
    private void LookAgain()
    {
        foreach (var finding in WorkInVain.Of(at)) Add(finding.Measure.Id, "Work on it changed nothing so far; read it again, and from another view, before more work.");
    }

    private void Flight()
    {
        foreach (var measure in LeaveItLaw.Unread(at)) Add(measure, "Shows whether the ball needs anything changed at all.");
    }

    private void Add(MeasureId measure, string because)
    {
        if (_next.All(n => n.Measure != measure.Value)) _next.Add(new DraftMeasureNext(measure.Value, because));
    }
}
