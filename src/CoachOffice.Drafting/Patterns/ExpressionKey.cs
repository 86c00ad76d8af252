using System.Globalization;
using System.Linq.Expressions;
using System.Text;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Patterns;

/// <summary>Writes all that an expression says, so that two of the same key do the same. Parameters are told apart by the order they are met in, whatever their names.</summary>
internal sealed class ExpressionKey : ExpressionVisitor
{
    private readonly StringBuilder _text = new();
    private readonly Dictionary<ParameterExpression, int> _parameters = [];
    private bool _whole = true;

    /// <summary>The key; null for an expression that holds on to an object or is of a kind not known here.</summary>
    public static string? Of(LambdaExpression expression)
    {
        var key = new ExpressionKey();
        key.Visit(expression);
        return key._whole ? key._text.ToString() : null;
    }

    /// <inheritdoc/>
    public override Expression? Visit(Expression? node)
    {
        if (node is null) _text.Append("- ");
        else
        {
            _text.Append(node.NodeType).Append(' ').Append(node.Type).Append(' ').Append(Own(node)).Append(' ');
            base.Visit(node);
        }

        return node;
    }

    /// <inheritdoc/>
    protected override MemberBinding VisitMemberBinding(MemberBinding node) => Unknown(node);

    /// <inheritdoc/>
    protected override LabelTarget? VisitLabelTarget(LabelTarget? node) => Unknown(node);

    /// <inheritdoc/>
    protected override ElementInit VisitElementInit(ElementInit node) => Unknown(node);

    /// <summary>What a node says besides its type and its parts, and how many parts it has where that differs.</summary>
    private string Own(Expression node) => node switch
    {
        ConstantExpression c => Constant(c.Value),
        ParameterExpression p => Number(p).ToString(CultureInfo.InvariantCulture),
        MethodCallExpression c => $"{c.Method.DeclaringType} {c.Method} {c.Arguments.Count}",
        MemberExpression m => $"{m.Member.DeclaringType} {m.Member}",
        UnaryExpression u => $"{u.Method}",
        BinaryExpression b => $"{b.Method} {b.Conversion is null} {b.IsLiftedToNull}",
        LambdaExpression l => $"{l.Parameters.Count}",
        BlockExpression b => $"{b.Variables.Count} {b.Expressions.Count}",
        InvocationExpression i => $"{i.Arguments.Count}",
        ConditionalExpression or DefaultExpression => "",
        _ => $"{Unknown(node).NodeType}",
    };

    private string Constant(object? value) => value switch
    {
        null => "null",
        string text => $"{text.Length} {text}",
        int number => number.ToString(CultureInfo.InvariantCulture),
        bool or Enum => $"{value}",
        ValueCondition bound => string.Create(CultureInfo.InvariantCulture, $"{bound.Measure.Value} {bound.Side} {bound.Bound:R}"),
        int[] rows => $"[{string.Join(' ', rows)}]",
        _ => $"{Unknown(value)}",
    };

    private int Number(ParameterExpression parameter)
    {
        if (!_parameters.TryGetValue(parameter, out var number)) _parameters.Add(parameter, number = _parameters.Count);
        return number;
    }

    private T Unknown<T>(T part)
    {
        _whole = false;
        return part;
    }
}
