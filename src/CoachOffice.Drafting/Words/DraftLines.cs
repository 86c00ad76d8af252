using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting.Causes;
using CoachOffice.Drafting.Drills;
using CoachOffice.Drafting.Ordering;
using CoachOffice.Drafting.Reading.Canonical;

namespace CoachOffice.Drafting.Words;

/// <summary>Puts what was found and chosen into the lines of the draft.</summary>
internal sealed class DraftLines(LessonAtHand at, CauseGraph graph, Picked picked)
{
    /// <summary>The whole draft; <paramref name="parked"/> are the faults that were no candidates.</summary>
    public Draft Draft(DraftRulebook rulebook, IReadOnlyList<DraftFocus> focus, IReadOnlyList<DraftMeasureNext> next, IReadOnlyList<DraftParked> parked) => new()
    {
        Rulebook = rulebook,
        Engine = Drafter.Engine,
        Input = CanonicalInput.Sha256(at.Facts),
        Findings = [.. at.Graded.Select(Finding)],
        Causes = [.. graph.Standing.Select(s => new DraftCause(s.Pattern.Id.Value, s.Root, graph.ExplainedBy(s), s.Pattern.Because))],
        Focus = focus,
        Parked = [.. picked.Parked, .. parked],
        Stages = Stages(),
        Withheld = Withheld(),
        MeasureNext = next,
        Strengths = [.. at.Graded.Where(Grading.IsStrength).Select(f => f.Measure.Id.Value)],
        Cautions = new PlanCautions(at, picked).All(),
        Trace = at.Trace.Steps,
    };

    public static IReadOnlyList<DraftFocus> Focus(IReadOnlyList<Focus> focuses, NextReadings next) =>
        [.. focuses.Select((focus, i) => new DraftFocus(i + 1, focus.Candidate.Fault, focus.Candidate.Pattern?.Id.Value, Because(focus.Candidate, next), focus.After))];

    private static DraftFinding Finding(Finding finding) => new()
    {
        Measure = finding.Measure.Id.Value,
        Side = finding.Side,
        Grade = finding.Grade,
        Value = finding.Value.Value,
        Unit = finding.Measure.Unit.Symbol,
        StandardError = finding.StandardError,
        RangeLow = finding.Range?.Low,
        RangeHigh = finding.Range?.High,
        OutsideBy = finding.OutsideBy,
        ChanceOutside = finding.ChanceOutside,
    };

    private List<DraftStage> Stages()
    {
        var gates = new Gates(at);
        return [.. picked.Focuses.SelectMany(f => f.Ladder.Rungs.Select(r => new DraftStage(f.Candidate.Fault, r.Stage, r.Drills, gates.After(f.Candidate, r))))];
    }

    /// <summary>Each drill once, with the first reason that came up; none that another stage of the plan uses.</summary>
    private List<DraftWithheld> Withheld()
    {
        var offered = picked.Focuses.SelectMany(f => f.Ladder.Rungs).SelectMany(r => r.Drills).Select(d => d.Drill).ToHashSet();
        return [.. picked.Withheld.Where(w => !offered.Contains(w.Drill)).DistinctBy(w => w.Drill)];
    }

    private static string Because(Candidate candidate, NextReadings next) =>
        candidate.Pattern?.Because
        ?? (candidate.IsProvisional ? Sentences.Provisional(candidate.Finding, next.Deciding(candidate.Fault)) : Sentences.OnItsOwn(candidate.Finding));
}
