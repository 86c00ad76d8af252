using System.Linq.Expressions;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Patterns;

namespace CoachOffice.Drafting.Tests.Patterns;

/// <summary>Two expressions share compiled code only when they say the same in every part.</summary>
public sealed class ExpressionKeyTests
{
    private static readonly ParameterExpression X = Expression.Parameter(typeof(LessonContext), "x");
    private static readonly ParameterExpression Y = Expression.Parameter(typeof(LessonContext), "y");

    [Fact]
    public void The_same_said_again_has_the_same_key_whatever_its_parameters_are_called()
    {
        Assert.Equal(Key(Expression.Lambda(IsOut(X, 1, Side.Low), X)), Key(Expression.Lambda(IsOut(Y, 1, Side.Low), Y)));
        Assert.Equal(Key(Expression.Lambda(Rows(1, 2), X)), Key(Expression.Lambda(Rows(1, 2), X)));
        Assert.Equal(Key(Expression.Lambda(Beyond(2), X)), Key(Expression.Lambda(Beyond(2), X)));
    }

    [Fact]
    public void Whatever_differs_the_key_differs()
    {
        LambdaExpression[] all =
        [
            Expression.Lambda(IsOut(X, 1, Side.Low), X), Expression.Lambda(IsOut(X, 2, Side.Low), X), Expression.Lambda(IsOut(X, 1, Side.High), X),
            Expression.Lambda(IsOut(X, 1, Side.Low), X, Y), Expression.Lambda(IsOut(Y, 1, Side.Low), X, Y), Expression.Lambda(Expression.Not(IsOut(X, 1, Side.Low)), X),
            Expression.Lambda(Expression.AndAlso(IsOut(X, 1, Side.Low), IsOut(X, 2, Side.Low)), X), Expression.Lambda(Expression.OrElse(IsOut(X, 1, Side.Low), IsOut(X, 2, Side.Low)), X),
            Expression.Lambda(Expression.Call(X, nameof(LessonContext.IsKnown), [], Expression.Constant(1)), X), Expression.Lambda(Expression.Call(X, nameof(LessonContext.IsInRange), [], Expression.Constant(1)), X),
            Expression.Lambda(Rows(1, 2), X), Expression.Lambda(Rows(12), X), Expression.Lambda(Beyond(2), X), Expression.Lambda(Beyond(2.5), X),
            Expression.Lambda(Expression.Constant(true), X), Expression.Lambda(Expression.Constant("1"), X), Expression.Lambda(Expression.Constant(1), X), Expression.Lambda(Expression.Constant(null), X),
            Expression.Lambda(Expression.Property(X, nameof(LessonContext.Club)), X), Expression.Lambda(Expression.Property(X, nameof(LessonContext.Findings)), X),
            Expression.Lambda(Expression.Block(Expression.Constant(1), Expression.Constant(2)), X), Expression.Lambda(Expression.Block([Y], Expression.Constant(1), Expression.Constant(2)), X),
        ];
        var keys = all.Select(Key).ToList();
        Assert.DoesNotContain(null, keys);
        Assert.Equal(keys.Count, keys.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void What_holds_on_to_an_object_or_is_made_of_parts_not_known_here_has_no_key()
    {
        Assert.Null(Key(Expression.Lambda(Expression.Constant(new object()), X)));
        Assert.Null(Key(Expression.Lambda(Expression.New(typeof(object)), X)));
        Assert.Null(Key(Expression.Lambda(Expression.MemberInit(Expression.New(typeof(Uri).GetConstructors()[0], Expression.Constant("a:b"))), X)));
        Assert.Null(Key(Expression.Lambda(Expression.Label(Expression.Label(typeof(int)), Expression.Constant(1)), X)));
    }

    private static string? Key(LambdaExpression expression) => ExpressionKey.Of(expression);

    private static MethodCallExpression IsOut(ParameterExpression lesson, int row, Side side) =>
        Expression.Call(lesson, nameof(LessonContext.IsOut), [], Expression.Constant(row), Expression.Constant(side), Expression.Constant(1));

    private static MethodCallExpression Rows(params int[] rows) =>
        Expression.Call(X, nameof(LessonContext.AreInRange), [], Expression.Constant(rows, typeof(IReadOnlyList<int>)), Expression.Constant(1));

    private static MethodCallExpression Beyond(double bound) =>
        Expression.Call(X, nameof(LessonContext.IsBeyond), [], Expression.Constant(1), Expression.Constant(new ValueCondition(MeasureId.From("a"), Side.Low, bound)));
}
