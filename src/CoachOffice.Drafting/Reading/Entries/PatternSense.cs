using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading.Entries;

/// <summary>Checks that the parts of one pattern fit together: that its root can be seen, is not its own consequence, and that it can fire at all.</summary>
internal sealed class PatternSense(FaultList faults)
{
    public void Check(Entry entry, Pattern pattern)
    {
        foreach (var root in pattern.Root.Where(root => !pattern.When.Any(condition => Sees(condition, root))))
            faults.Add(entry.Find("root")!, $"the root {root} is not among 'when', so the pattern could fire without it; add it there");
        foreach (var root in pattern.Root.Where(root => pattern.Explains.Contains(root) || pattern.ExplainsIfPresent.Contains(root)))
            faults.Add(entry.Find("root")!, $"the root {root} is explained by the pattern itself; take it out of the consequences");
        foreach (var twice in pattern.Explains.Intersect(pattern.ExplainsIfPresent))
            faults.Add(entry.Find("explains-if-present")!, $"{twice} is under explains already; leave it out here");
        foreach (var forbidden in pattern.Forbids.Intersect(pattern.Root))
            faults.Add(entry.Find("forbids")!, $"{forbidden} is the root; its drills cannot be forbidden");
        if (pattern.Over.Contains(pattern.Id)) faults.Add(entry.Find("over")!, "a pattern does not stand over itself");
        if (pattern.Before.Contains(pattern.Id)) faults.Add(entry.Find("before")!, "a pattern does not come before itself");
        CheckNeeds(entry, pattern);
    }

    private void CheckNeeds(Entry entry, Pattern pattern)
    {
        foreach (var condition in pattern.When.OfType<OutCondition>().Where(c => pattern.Needs.Contains(c.Measure)))
            faults.Add(entry.Find("needs")!, $"{condition.Measure.Value} must be in range here but out under 'when'; the pattern would never fire");
    }

    private static bool Sees(Condition condition, FaultId root) => condition switch
    {
        OutCondition seen => seen.Measure == root.Measure && (seen.Side == Side.None || seen.Side == root.Side),
        ValueCondition value => value.Measure == root.Measure && value.Side == root.Side,
        StateCondition state => state.Measure == root.Measure && state.State == MeasureState.NotInRange,
        SameSideCondition same => same.Measures.Contains(root.Measure),
        AnyOfCondition any => any.Any.Any(part => Sees(part, root)),
        _ => false,
    };
}
