using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;

namespace CoachOffice.Drafting.Replay;

/// <summary>Which measures serve a goal in one of two books only.</summary>
internal sealed class GoalDifference
{
    private readonly HashSet<(Goal Goal, MeasureId Measure, bool Driver)> _changed = [];

    public GoalDifference(Rulebook inForce, Rulebook edited)
    {
        foreach (var driver in new[] { false, true })
        {
            _changed.UnionWith(Served(inForce, driver).Except(Served(edited, driver)));
            _changed.UnionWith(Served(edited, driver).Except(Served(inForce, driver)));
        }
    }

    /// <summary>The measures concerned.</summary>
    public IEnumerable<MeasureId> Measures => _changed.Select(c => c.Measure).Distinct();

    /// <summary>True when a measure that is out serves one of the student's goals otherwise.</summary>
    public bool Shows(LessonFacts facts, IReadOnlySet<MeasureId> isOut) =>
        _changed.Any(c => c.Driver == (facts.Club == Club.Driver) && facts.Student.Goals.Contains(c.Goal) && isOut.Contains(c.Measure));

    private static IEnumerable<(Goal, MeasureId, bool)> Served(Rulebook book, bool driver) =>
        book.Goals.SelectMany(g => g.Measures.Concat(driver ? g.DriverOnly : []).Select(m => (g.Goal, m, driver)));
}
