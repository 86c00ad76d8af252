using System.Linq.Expressions;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Patterns;

/// <summary>What a pattern asks of a lesson, as an expression for the rule engine: calls on the lesson with constants only. What it says of patterns that fired is not in it.</summary>
internal sealed class LessonExpressions(FaultFacts facts, Pattern pattern, Expression lesson)
{
    /// <summary>Everything the pattern asks for, with one finding at least moderate.</summary>
    public Expression Whole() =>
        Clubs().Concat(pattern.When.Select(Holds)).Concat(pattern.Needs.Select(m => Ask(nameof(LessonContext.IsInRange), Row(m))))
            .Append(pattern.When.SelectMany(Moderate).DefaultIfEmpty(Expression.Constant(false)).Aggregate(Expression.OrElse))
            .Concat(pattern.Unless.Select(c => (Expression)Expression.Not(RulesOut(c))))
            .Aggregate(Expression.AndAlso);

    private IEnumerable<Expression> Clubs() =>
        pattern.Clubs.Count == 0 ? [] : [pattern.Clubs.Select(c => (Expression)Expression.Equal(Expression.Property(lesson, nameof(LessonContext.Club)), Expression.Constant(c))).Aggregate(Expression.OrElse)];

    private Expression Holds(Condition condition) => condition switch
    {
        OutCondition c => Out(c.Measure, c.Side, c.AtLeast - Grade.Mild + 1),
        ValueCondition c => Ask(nameof(LessonContext.IsBeyond), Row(c.Measure), Expression.Constant(c)),
        StateCondition c => State(c),
        ReadingsCondition c => Ask(nameof(LessonContext.IsRead), Row(c.Measure), Expression.Constant(c.AtLeast)),
        OthersInRangeCondition c => Ask(nameof(LessonContext.AreInRange), Expression.Constant(Named(), typeof(IReadOnlyList<int>)), Expression.Constant(c.AtLeast)),
        SameSideCondition c => new[] { Side.Low, Side.High }.Select(side => c.Measures.Select(m => (Expression)Out(m, side, 1)).Aggregate(Expression.AndAlso)).Aggregate(Expression.OrElse),
        AnyOfCondition c => c.Any.Select(Holds).Aggregate(Expression.OrElse),
        _ => throw new InvalidOperationException($"'{ConditionText.Of(condition)}' stands only under `unless`."),
    };

    /// <summary>A condition under `unless`; what nobody read passes. A pattern named there is the engine's own affair.</summary>
    private Expression RulesOut(Condition condition) => condition switch
    {
        StateCondition { State: MeasureState.NotInRange } c => Expression.AndAlso(Ask(nameof(LessonContext.IsKnown), Row(c.Measure)), State(c)),
        AnyOfCondition c => c.Any.Select(RulesOut).Aggregate(Expression.OrElse),
        FiredCondition => Expression.Constant(false),
        _ => Holds(condition),
    };

    /// <summary>The ways in which a finding that speaks for the pattern by this condition is at least moderate.</summary>
    private IEnumerable<Expression> Moderate(Condition condition) => condition switch
    {
        OutCondition c => [Out(c.Measure, c.Side, Math.Max(2, c.AtLeast - Grade.Mild + 1))],
        ValueCondition c => [Expression.AndAlso(Out(c.Measure, c.Side, 2), Holds(c))],
        SameSideCondition c => c.Measures.Select(m => (Expression)Expression.AndAlso(Out(m, Side.None, 2), Holds(c))),
        AnyOfCondition c => c.Any.SelectMany(Moderate),
        _ => [],
    };

    private Expression State(StateCondition condition) => condition.State switch
    {
        MeasureState.InRange => Ask(nameof(LessonContext.IsInRange), Row(condition.Measure)),
        MeasureState.NotInRange => Expression.Not(Ask(nameof(LessonContext.IsInRange), Row(condition.Measure))),
        MeasureState.Measured => Ask(nameof(LessonContext.IsKnown), Row(condition.Measure)),
        _ => Expression.Not(Ask(nameof(LessonContext.IsKnown), Row(condition.Measure))),
    };

    private int[] Named() => [.. ConditionTest.NamedIn(pattern).Select(facts.RowOf).Distinct()];

    private MethodCallExpression Out(MeasureId measure, Side side, int weight) => Ask(nameof(LessonContext.IsOut), Row(measure), Expression.Constant(side), Expression.Constant(weight));

    private ConstantExpression Row(MeasureId measure) => Expression.Constant(facts.RowOf(measure));

    private MethodCallExpression Ask(string question, params Expression[] about) => Expression.Call(lesson, typeof(LessonContext).GetMethod(question)!, about);
}
