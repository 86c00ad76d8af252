using System.Linq.Expressions;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Patterns;

/// <summary>Turns conditions on one finding into expressions for the rule engine: small tests with constants only, so that equal tests of different rules share one node.</summary>
internal static class FindingExpressions
{
    /// <summary>The tests a single finding has to pass, most selective first; null when the condition is not about one finding that is there.</summary>
    public static IReadOnlyList<Expression>? Of(Condition condition, ParameterExpression finding) => condition switch
    {
        OutCondition c => [IsMeasure(finding, c.Measure), .. SideTest(finding, c.Side), WeightAtLeast(finding, c.AtLeast - Grade.Mild + 1)],
        ValueCondition c => [IsMeasure(finding, c.Measure), .. SideTest(finding, c.Side), WeightAtLeast(finding, 1), Bound(finding, c)],
        ReadingsCondition c => [IsMeasure(finding, c.Measure), Expression.GreaterThanOrEqual(Property(finding, nameof(Finding.Readings)), Expression.Constant(c.AtLeast))],
        StateCondition { State: MeasureState.InRange } c => [IsMeasure(finding, c.Measure), IsInRange(finding)],
        StateCondition { State: MeasureState.Measured } c => [IsMeasure(finding, c.Measure)],
        _ => null,
    };

    /// <summary>One expression for one test or several.</summary>
    public static Expression All(IReadOnlyList<Expression> tests) => tests.Aggregate(Expression.AndAlso);

    public static Expression IsMeasure(Expression finding, MeasureId measure) =>
        Expression.Equal(
            Property(Property(Property(finding, nameof(Finding.Measure)), nameof(Measure.Id)), nameof(MeasureId.Value)),
            Expression.Constant(measure.Value));

    public static Expression IsInRange(Expression finding) => Expression.Equal(Property(finding, nameof(Finding.Grade)), Expression.Constant(Grade.InRange));

    public static Expression WeightAtLeast(Expression finding, int weight) =>
        Expression.GreaterThanOrEqual(Property(finding, nameof(Finding.Weight)), Expression.Constant(weight));

    public static Expression Property(Expression owner, string name) => Expression.Property(owner, name);

    private static IEnumerable<Expression> SideTest(Expression finding, Side side) =>
        side == Side.None ? [] : [Expression.Equal(Property(finding, nameof(Finding.Side)), Expression.Constant(side))];

    private static BinaryExpression Bound(Expression finding, ValueCondition condition)
    {
        var value = Property(Property(finding, nameof(Finding.Value)), nameof(Quantity.Value));
        var bound = Expression.Constant(condition.Bound);
        return condition.Side == Side.Low ? Expression.LessThan(value, bound) : Expression.GreaterThan(value, bound);
    }
}
