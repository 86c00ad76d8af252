using System.Globalization;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting.Drills;
using CoachOffice.Drafting.Ordering;
using CoachOffice.Drafting.Patterns;

namespace CoachOffice.Drafting.Words;

/// <summary>Which reading to take next, and what it would decide; each measure once, the most telling reason first.</summary>
internal sealed class NextReadings(LessonAtHand at, IReadOnlyList<PatternMatch> matches, TrainAfterLaws laws)
{
    private readonly List<DraftMeasureNext> _next = [];

    public IReadOnlyList<DraftMeasureNext> Of(Picked picked, bool leaveIt)
    {
        foreach (var focus in picked.Focuses.Where(f => f.Candidate.IsProvisional)) Decides(focus.Candidate.Fault);
        LookAgain();
        Passed();
        foreach (var match in matches.Where(m => m.IsNearMiss && m.Missing.Count == 1)) Open(match);
        foreach (var focus in picked.Focuses) Earlier(focus.Candidate);
        foreach (var finding in at.Lesson.Findings.Where(f => f.Grade == Grade.Borderline && !f.IsDerived)) AtTheEdge(finding);
        if (picked.Focuses.Count == 0 && !leaveIt) Flight();
        return _next;
    }

    /// <summary>The unread facts that would say whether something stands behind this fault, of the nearest pattern first.</summary>
    public Measure Deciding(FaultId fault) => at.Book.Find(Undecided(fault).First().Missing[0])!;

    private void Decides(FaultId fault)
    {
        foreach (var match in Undecided(fault)) Open(match);
    }

    private IEnumerable<PatternMatch> Undecided(FaultId fault) =>
        matches.Where(m => m.IsUndecided && m.Matched.Any(f => f.Weight >= 2) && SortFaults.Consequences(m).Contains(fault)).OrderBy(m => m.Missing.Count);

    private void Open(PatternMatch match)
    {
        foreach (var measure in match.Missing)
            Add(measure, $"Would show whether \"{match.Pattern.Name}\" stands behind {Sentences.Listed([.. match.Matched.Select(f => Sentences.LowerFirst(f.Measure.Name))])}.");
    }

    private void Passed()
    {
        foreach (var match in matches.Where(m => m.Holds))
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

    private static string AtTheEdge(Finding finding, MeasuredValue taken)
    {
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
