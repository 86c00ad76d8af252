using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting.Drills;
using CoachOffice.Drafting.Ordering;

namespace CoachOffice.Drafting.Words;

/// <summary>Puts what was found and chosen into the lines of the draft.</summary>
internal static class DraftLines
{
    public static DraftFinding Finding(Finding finding) => new()
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

    public static IReadOnlyList<DraftFocus> Focus(IReadOnlyList<Focus> focuses, NextReadings next) =>
        [.. focuses.Select((focus, i) => new DraftFocus(i + 1, focus.Candidate.Fault, focus.Candidate.Pattern?.Id.Value, Because(focus.Candidate, next), focus.After))];

    public static IReadOnlyList<DraftStage> Stages(LessonAtHand at, IReadOnlyList<Focus> focuses)
    {
        var gates = new Gates(at);
        return [.. focuses.SelectMany(f => f.Ladder.Rungs.Select(r => new DraftStage(f.Candidate.Fault, r.Stage, r.Drills, gates.After(f.Candidate, r))))];
    }

    /// <summary>Each drill once, with the first reason that came up; none that another stage of the plan uses.</summary>
    public static IReadOnlyList<DraftWithheld> Withheld(Picked picked)
    {
        var offered = picked.Focuses.SelectMany(f => f.Ladder.Rungs).SelectMany(r => r.Drills).Select(d => d.Drill).ToHashSet();
        return [.. picked.Withheld.Where(w => !offered.Contains(w.Drill)).DistinctBy(w => w.Drill)];
    }

    private static string Because(Candidate candidate, NextReadings next) =>
        candidate.Pattern?.Because
        ?? (candidate.IsProvisional ? Sentences.Provisional(candidate.Finding, next.Deciding(candidate.Fault)) : Sentences.OnItsOwn(candidate.Finding));
}
