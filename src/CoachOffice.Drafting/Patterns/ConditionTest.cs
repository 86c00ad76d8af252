using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Patterns;

/// <summary>Holds one condition against a lesson in plain C#. The rule engine has its own way; tests hold the two against each other.</summary>
internal sealed class ConditionTest(LessonContext lesson, Pattern pattern, Func<PatternId, bool> fires)
{
    public Tested Of(Condition condition) => condition switch
    {
        OutCondition c => Reading(c, c.Measure, f => IsOut(f, c.Side) && f.Grade >= c.AtLeast, matches: true),
        ValueCondition c => Reading(c, c.Measure, f => IsOut(f, c.Side) && IsBeyond(f, c), matches: true),
        StateCondition c => State(c),
        ReadingsCondition c => Reading(c, c.Measure, f => f.Readings >= c.AtLeast, matches: false),
        OthersInRangeCondition c => Plain(c, CountOthersInRange(lesson, pattern) >= c.AtLeast),
        SameSideCondition c => SameSide(c),
        AnyOfCondition c => Any(c, Of),
        FiredCondition c => Plain(c, fires(c.Pattern)),
        _ => throw new InvalidOperationException($"No test for {condition.GetType().Name}."),
    };

    /// <summary>A condition under `unless`: "not in range" is also true of what nobody read, and that may not rule a pattern out.</summary>
    public Tested OfExclusion(Condition condition) => condition switch
    {
        StateCondition { State: MeasureState.NotInRange } c => Reading(c, c.Measure, f => f.Grade != Grade.InRange, matches: false),
        AnyOfCondition c => Any(c, OfExclusion),
        _ => Of(condition),
    };

    /// <summary>Measures the pattern's `when` does not name, read and in range. Derived ones would count the same reading twice.</summary>
    public static int CountOthersInRange(LessonContext lesson, Pattern pattern)
    {
        var named = pattern.When.SelectMany(Named).ToHashSet();
        return lesson.Findings.Count(f => f.Grade == Grade.InRange && !f.IsDerived && !named.Contains(f.Measure.Id));
    }

    private static IEnumerable<MeasureId> Named(Condition condition) => condition switch
    {
        OutCondition c => [c.Measure],
        ValueCondition c => [c.Measure],
        ReadingsCondition c => [c.Measure],
        StateCondition c => [c.Measure],
        SameSideCondition c => c.Measures,
        AnyOfCondition c => c.Any.SelectMany(Named),
        _ => [],
    };

    private static bool IsOut(Finding finding, Side side) => finding.IsOut && (side == Side.None || finding.Side == side);

    private static bool IsBeyond(Finding finding, ValueCondition bound) =>
        bound.Side == Side.Low ? finding.Value.Value < bound.Bound : finding.Value.Value > bound.Bound;

    private static Tested Plain(Condition condition, bool holds) => new(condition, holds ? Truth.Yes : Truth.No, [], []);

    private Tested Reading(Condition condition, MeasureId measure, Func<Finding, bool> holds, bool matches)
    {
        if (lesson.Find(measure) is not { } finding) return new Tested(condition, Truth.Unmeasured, [], [measure]);
        return holds(finding) ? new Tested(condition, Truth.Yes, matches ? [finding] : [], []) : new Tested(condition, Truth.No, [], []);
    }

    private Tested State(StateCondition condition) => condition.State switch
    {
        MeasureState.InRange => Reading(condition, condition.Measure, f => f.Grade == Grade.InRange, matches: false),
        MeasureState.Measured => Reading(condition, condition.Measure, _ => true, matches: false),
        MeasureState.NotInRange => Plain(condition, lesson.Find(condition.Measure)?.Grade != Grade.InRange),
        _ => Plain(condition, lesson.Find(condition.Measure) is null),
    };

    private Tested SameSide(SameSideCondition condition)
    {
        var read = condition.Measures.Select(lesson.Find).OfType<Finding>().ToList();
        var agree = read.All(f => f.IsOut) && read.Select(f => f.Side).Distinct().Count() <= 1;
        if (!agree) return new Tested(condition, Truth.No, [], []);
        var missing = condition.Measures.Where(m => lesson.Find(m) is null).ToList();
        return missing.Count > 0 ? new Tested(condition, Truth.Unmeasured, read, missing) : new Tested(condition, Truth.Yes, read, []);
    }

    private static Tested Any(AnyOfCondition condition, Func<Condition, Tested> test)
    {
        var branches = condition.Any.Select(test).ToList();
        var holding = branches.Where(b => b.Truth == Truth.Yes).ToList();
        if (holding.Count > 0) return new Tested(condition, Truth.Yes, [.. holding.SelectMany(b => b.Matched).Distinct()], []);
        var open = branches.Where(b => b.Truth == Truth.Unmeasured).SelectMany(b => b.Missing).Distinct().ToList();
        return new Tested(condition, open.Count > 0 ? Truth.Unmeasured : Truth.No, [], open);
    }
}
