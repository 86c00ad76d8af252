using CoachOffice.Domain.Measuring;
using CoachOffice.Drafting.Causes;

namespace CoachOffice.Drafting.Ordering;

/// <summary>Step C of the ordering: the key of each candidate.</summary>
internal sealed class KeyOfWork(LessonAtHand at, TrainAfterLaws laws, CauseGraph graph, IReadOnlyList<Candidate> candidates)
{
    /// <summary>A spine that leans this far toward the target at the top is looked at first for comfort's sake (common practice, no source).</summary>
    private const double ReverseTiltDegrees = -2;

    private const int OutcomeBonus = 2;
    private const int FirstGoalBonus = 2;
    private const int LaterGoalBonus = 1;

    /// <summary>The spine leans toward the target at the top.</summary>
    public static bool IsReverseTilt(Finding finding) =>
        finding.Measure.Id == NamedMeasures.TopSpineTilt && finding is { IsOut: true, Side: Side.Low } && finding.Value.Value < ReverseTiltDegrees;

    public OrderKey Of(Candidate candidate)
    {
        var finding = candidate.Finding;
        var moment = candidate.Pattern is null ? finding.Measure.Moment : CauseGraph.RootMoment(finding.Measure);
        return new OrderKey(
        [
            IsReverseTilt(finding) && finding.Weight >= 2 ? 0 : 1,
            moment == Moment.Address && candidate.Pattern is not null ? 0 : 1,
            candidates.Count(c => c.Fault != candidate.Fault && (laws.Waits(finding.Measure.Id, c.Finding.Measure.Id) || graph.ComesBefore(c.Fault, candidate.Fault))),
            -Worth(candidate),
            (int)moment,
            -finding.Weight,
            -(int)Math.Round(100 * finding.OutsideBy / finding.Step!.Value, MidpointRounding.AwayFromZero),
            finding.Measure.Row,
        ]);
    }

    /// <summary>What work on it is worth: the weight of all it leads to, more for outcomes and goals, and for what waits on it.</summary>
    private int Worth(Candidate candidate)
    {
        var reached = candidate.Reach.Select(at.Out).ToList();
        var goals = at.Facts.Student.Goals;
        var worth = reached.Sum(f => f.Weight) + (OutcomeBonus * reached.Count(f => f.Measure.Outcome));
        if (goals.Count > 0 && reached.Any(f => GoalLaws.Serves(at, f.Measure.Id, goals[0]))) worth += FirstGoalBonus;
        if (goals.Skip(1).Any(goal => reached.Any(f => GoalLaws.Serves(at, f.Measure.Id, goal)))) worth += LaterGoalBonus;
        return worth + at.Lesson.AllOut.Count(f => f.Fault != candidate.Fault && laws.Before(f.Measure.Id).Contains(candidate.Finding.Measure.Id));
    }
}
