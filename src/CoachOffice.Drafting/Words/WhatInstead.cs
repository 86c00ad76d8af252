using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Drills;
using CoachOffice.Drafting.Ordering;

namespace CoachOffice.Drafting.Words;

/// <summary>Where a plan leaves something out, what that concerns: the occasions on which it must say what to do instead.</summary>
internal sealed class WhatInstead(LessonAtHand at, Picked picked)
{
    private bool HasLimitOfToday => at.Facts.Student.Limits.Any(l => l.Status == LimitStatus.Current);

    /// <summary>The stages or findings concerned, or null when the occasion is not given.</summary>
    public IReadOnlyList<string>? Concerned(CautionOccasion occasion)
    {
        var words = occasion switch
        {
            CautionOccasion.StagesLeftOutRoom => Stages(because => because == WithheldReason.Room),
            CautionOccasion.StagesLeftOut => Stages(because => because is not (null or WithheldReason.Room) && !(because == WithheldReason.Limit && HasLimitOfToday)),
            CautionOccasion.NoDrillTime => Findings(WithheldReason.Time),
            CautionOccasion.NoDrillInVain => Findings(WithheldReason.TriedInVain),
            CautionOccasion.NoDrillOpposite => Findings(WithheldReason.OppositeFault),
            CautionOccasion.NoDrillPlace => Findings(WithheldReason.Room, WithheldReason.Kit, WithheldReason.Level, WithheldReason.Age),
            CautionOccasion.NoDrillLimit => Findings(WithheldReason.Limit),
            _ => [],
        };
        return words.Count == 0 ? null : words;
    }

    private List<string> Stages(Func<WithheldReason?, bool> concerns) =>
        [.. picked.Focuses.SelectMany(f => f.Ladder.Missed).Where(m => concerns(m.Because)).Select(m => m.Stage).Distinct().Order().Select(Name)];

    /// <summary>Named by the reason for which the first stage has no drill: without a beginning nothing follows.</summary>
    private List<string> Findings(params IReadOnlyList<WithheldReason> reasons) =>
        [.. picked.Skipped.Where(s => Because(s.Ladder) is { } because && reasons.Contains(because)).Select(s => Sentences.LowerFirst(s.Candidate.Finding.Measure.Name)).Distinct()];

    private static WithheldReason? Because(Ladder none) => none.Missed.Count == 0 ? null : none.Missed[0].Because;

    private static string Name(Stage stage) => stage switch
    {
        Stage.Rehearse => "slow rehearsal",
        Stage.Half => "half swings",
        Stage.Full => "full swings",
        Stage.Mix => "changing clubs and targets",
        _ => "play",
    };
}
