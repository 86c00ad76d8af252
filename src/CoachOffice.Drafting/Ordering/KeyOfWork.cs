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
            WaitsFor(candidate),
            -Worth(candidate),
            (int)moment,
            -finding.Weight,
            -(int)Math.Round(100 * finding.OutsideBy / finding.Step!.Value, MidpointRounding.AwayFromZero),
            finding.Measure.Row,
        ]);
    }

    /// <summary>How many other candidates come before it.</summary>
    private int WaitsFor(Candidate candidate)
    {
        var count = 0;
        foreach (var other in candidates)
            if (other.Fault != candidate.Fault && (laws.Waits(candidate.Finding.Measure.Id, other.Finding.Measure.Id) || graph.ComesBefore(other.Fault, candidate.Fault))) count++;
        return count;
    }

    /// <summary>What work on it is worth: the weight of all it leads to, more for outcomes and goals, and for what waits on it.</summary>
    private int Worth(Candidate candidate)
    {
        var (worth, first, later) = (0, false, false);
        var goals = at.Facts.Student.Goals;
        foreach (var fault in candidate.Reach)
        {
            var finding = at.Out(fault);
            worth += finding.Weight + (finding.Measure.Outcome ? OutcomeBonus : 0);
            for (var i = 0; i < goals.Count; i++)
            {
                if (!GoalLaws.Serves(at, finding.Measure.Id, goals[i])) continue;
                if (i == 0) first = true;
                else later = true;
            }
        }

        foreach (var finding in at.Lesson.Findings)
            if (finding.IsOut && finding.Fault != candidate.Fault && laws.Before(finding.Measure.Id).Contains(candidate.Finding.Measure.Id)) worth++;
        return worth + (first ? FirstGoalBonus : 0) + (later ? LaterGoalBonus : 0);
    }
}
