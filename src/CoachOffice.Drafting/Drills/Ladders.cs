using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting.Ordering;

namespace CoachOffice.Drafting.Drills;

/// <summary>Offers the drills of a fault's progression to one student: what can be done, in what amount, and what is withheld.</summary>
internal sealed class Ladders(LessonAtHand at, Withholding withholding)
{
    private readonly Dosing _dosing = new(at.Book.Dosage);
    private readonly List<(Candidate Candidate, Week Week, Ladder Ladder)> _known = [];

    /// <summary>The ladder of a candidate within its part of the week. A provisional one ends before full swings.</summary>
    public Ladder For(Candidate candidate, Week week)
    {
        // Asked for again when a focus is kept or another is weighed beside it.
        foreach (var known in _known) if (ReferenceEquals(known.Candidate, candidate) && known.Week == week) return known.Ladder;
        var ladder = Climbed(candidate, week);
        _known.Add((candidate, week, ladder));
        return ladder;
    }

    private Ladder Climbed(Candidate candidate, Week week)
    {
        List<LadderRung> rungs = [];
        List<DraftWithheld> withheld = [];
        List<MissedRung> missed = [];
        foreach (var rung in at.Book.For(candidate.Fault)?.Rungs ?? [])
        {
            if (candidate.IsProvisional && rung.Stage > Stage.Half) break;
            var before = withheld.Count;
            if (Climb(rung, week, withheld) is { } fits) rungs.Add(fits);
            else missed.Add(MissedRung.Of(rung.Stage, withheld, before));
        }

        return new Ladder(rungs, withheld, missed);
    }

    private LadderRung? Climb(Rung rung, Week week, List<DraftWithheld> withheld)
    {
        var usable = new List<Drill>();
        foreach (var id in rung.Drills)
        {
            var drill = at.Book.Find(id)!;
            if (withholding.Of(drill, rung.Stage) is { } reason) withheld.Add(reason);
            else usable.Add(drill);
        }

        var doses = _dosing.Fit(rung.Stage, usable, week);
        if (doses.Count == 0) withheld.AddRange(usable.Select(withholding.Time));
        return doses.Count == 0 ? null : new LadderRung(rung.Stage, doses, usable[0]);
    }
}
