using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Patterns;

namespace CoachOffice.Drafting.Checks.Algebra;

/// <summary>Turns a condition into the ways in which it can hold.</summary>
internal sealed class ConditionBoxes(Space space, Func<PatternId, IReadOnlyList<Box>> firing)
{
    /// <summary>The ways, under `when`.</summary>
    public IReadOnlyList<Alternative> Of(Condition condition) => condition switch
    {
        AnyOfCondition any => [.. any.Any.SelectMany(Of)],
        SameSideCondition same => [.. new[] { Side.Low, Side.High }.Select(side => SameSide(same, side)).OfType<Alternative>()],
        OthersInRangeCondition others => [new Alternative(Box.Everything(space, others.AtLeast), [])],
        FiredCondition fired => [.. firing(fired.Pattern).Select(box => new Alternative(box, []))],
        _ => Leaf(condition) is { } one ? [one] : [],
    };

    /// <summary>The lessons a condition under `unless` shuts out. What nobody read passes, also where "not in range" is asked.</summary>
    public IReadOnlyList<Box> ShutOut(Condition condition) => condition switch
    {
        AnyOfCondition any => [.. any.Any.SelectMany(ShutOut)],
        StateCondition { State: MeasureState.NotInRange } open => Cells(open.Measure, f => f.Grade != Grade.InRange),
        _ => [.. Of(condition).Select(way => way.Box)],
    };

    private IReadOnlyList<Box> Cells(MeasureId measure, Func<Finding, bool> test) =>
        Box.Everything(space).And(measure, space.Of(measure).Where(test)) is { } box ? [box] : [];

    private Alternative? Leaf(Condition condition)
    {
        var measure = Leaves.MeasureOf(condition);
        var cells = space.Of(measure).Where(condition);
        if (Box.Everything(space).And(measure, cells) is not { } box) return null;
        return new Alternative(box, condition is OutCondition or ValueCondition ? [(measure, cells)] : []);
    }

    private Alternative? SameSide(SameSideCondition same, Side side)
    {
        var all = new Alternative(Box.Everything(space), []);
        foreach (var measure in same.Measures)
        {
            var cells = space.Of(measure).Out(side);
            if (all.Box.And(measure, cells) is not { } box) return null;
            all = new Alternative(box, [.. all.Seen, (measure, cells)]);
        }

        return all;
    }
}
