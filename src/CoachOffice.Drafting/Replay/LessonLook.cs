using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Patterns;

namespace CoachOffice.Drafting.Replay;

/// <summary>Looks at one lesson with two books and says what could make its drafts differ. Errs only towards more: what it does not suspect is the same in both drafts.</summary>
internal sealed class LessonLook(Rulebook inForce, Rulebook edited, BookDifference difference)
{
    public Suspicion At(LessonFacts facts)
    {
        var before = new LessonContext(facts.Club, LessonGrading.Grade(inForce, facts));
        var after = difference.TouchesGrading ? new LessonContext(facts.Club, LessonGrading.Grade(edited, facts)) : before;
        var findings = new FindingComparison(before, after, difference.InMeasures);
        var isOut = before.AllOut.Select(f => f.Fault!.Value).ToHashSet();
        var open = findings.ReadElse || PatternsDiffer(before, after) || RestDiffers(facts, before, isOut);
        return new Suspicion(findings.AreGradedElse, open, isOut.Intersect(difference.InLadders).ToHashSet(), findings.Shifted);
    }

    private bool PatternsDiffer(LessonContext before, LessonContext after) =>
        difference.InPatterns.Changed.Any(id => Differs(id, PatternEvaluator.Match(inForce, id, before), PatternEvaluator.Match(edited, id, after)));

    /// <summary>A draft hears of a pattern when it holds, and when it holds a fault up until more is read; of the latter it also names what is missing.</summary>
    private bool Differs(PatternId id, PatternMatch? before, PatternMatch? after)
    {
        var (counted, counts) = (Counts(before), Counts(after));
        if (!counted && !counts) return false;
        return counted != counts || before!.Holds != after!.Holds || difference.InPatterns.SaysElse.Contains(id) || !before.Missing.SequenceEqual(after.Missing);
    }

    private static bool Counts(PatternMatch? match) => match is { Holds: true } or { HoldsUp: true };

    /// <summary>Laws, amounts and cautions that no finding shows.</summary>
    private bool RestDiffers(LessonFacts facts, LessonContext lesson, HashSet<FaultId> isOut)
    {
        var measures = isOut.Select(f => f.Measure).ToHashSet();
        return difference.InTrainAfter.Shows(measures)
            || difference.InGoals.Shows(facts, measures)
            || (difference.Dosage && isOut.Count > 0)
            || difference.InCautions.MayShow(facts, isOut.Count > 0)
            || (isOut.Count > 0 && difference.InMeasures.Renamed.Any(m => lesson.Find(m) is null));
    }
}
