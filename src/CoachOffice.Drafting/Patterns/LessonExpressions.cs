using System.Linq.Expressions;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Patterns;

/// <summary>Tests that speak of more than one finding, asked of the lesson as a whole.</summary>
internal static class LessonExpressions
{
    /// <summary>The condition as a call on the lesson's context.</summary>
    public static Expression Holds(ParameterExpression lesson, Pattern pattern, Condition condition) =>
        Expression.Call(typeof(LessonExpressions).GetMethod(nameof(IsTrue))!, lesson, Expression.Constant(pattern), Expression.Constant(condition, typeof(Condition)));

    /// <summary>Called by compiled expressions.</summary>
    public static bool IsTrue(LessonContext lesson, Pattern pattern, Condition condition) =>
        new ConditionTest(lesson, pattern, _ => throw new InvalidOperationException("A pattern is named only under `unless`.")).Of(condition).Truth == Truth.Yes;

    /// <summary>For each finding a true `when` rests on: the test that this finding is the one.</summary>
    public static IEnumerable<Expression> Leaves(ParameterExpression lesson, Pattern pattern, Condition condition, ParameterExpression finding) => condition switch
    {
        OutCondition or ValueCondition => [FindingExpressions.All(FindingExpressions.Of(condition, finding)!)],
        SameSideCondition same => same.Measures.Select(m => (Expression)Expression.AndAlso(FindingExpressions.IsMeasure(finding, m), Holds(lesson, pattern, same))),
        AnyOfCondition any => any.Any.SelectMany(b => Leaves(lesson, pattern, b, finding)),
        _ => [],
    };

    /// <summary>True when the expression reads this parameter.</summary>
    public static bool Uses(Expression expression, ParameterExpression parameter)
    {
        var search = new Search(parameter);
        search.Visit(expression);
        return search.Found;
    }

    private sealed class Search(ParameterExpression wanted) : ExpressionVisitor
    {
        public bool Found { get; private set; }

        protected override Expression VisitParameter(ParameterExpression node)
        {
            Found |= node == wanted;
            return node;
        }
    }
}
