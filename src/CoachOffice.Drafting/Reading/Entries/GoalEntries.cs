using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;

namespace CoachOffice.Drafting.Reading.Entries;

/// <summary>Reads <c>goals</c>: the measures that serve what a student wants.</summary>
internal sealed class GoalEntries(Shelf shelf)
{
    private readonly HashSet<Goal> _seen = [];

    /// <summary>All sound entries, one for each goal, in the order of the list of goals.</summary>
    public IReadOnlyList<GoalMeasures> Read() => [.. shelf.ReadAll("goals", One).OrderBy(g => g.Goal)];

    private GoalMeasures One(Entry entry)
    {
        var goal = new GoalMeasures(
            entry.Word<Goal>("goal"),
            entry.Distinct(entry.SomeItems("measures"), shelf.Ids.Measure),
            entry.Distinct(entry.ItemsIf("driver-only"), shelf.Ids.Measure));
        if (entry.Sound && !_seen.Add(goal.Goal)) shelf.Faults.Add(entry.Find("goal")!, $"{Terms.Of(goal.Goal)} has its measures already; write one entry a goal");
        foreach (var twice in goal.Measures.Intersect(goal.DriverOnly))
            shelf.Faults.Add(entry.Find("driver-only")!, $"{twice.Value} serves the goal with any club already; leave it out here");
        return goal;
    }
}
