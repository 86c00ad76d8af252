using System.Text;
using Fluid;
using Fluid.Ast;

namespace CoachOffice.UseCases.FollowUps.Wordings;

/// <summary>
/// Looks through a template somebody wrote: what it names, what it does, and its plain words in every branch. Allowed is what is named here; whatever else
/// a template could do (files, own variables, numbers without end) is refused by not being named.
/// </summary>
internal sealed class TemplateLook : AstVisitor
{
    private static readonly HashSet<string> Filters = new(StringComparer.Ordinal) { "minus", "plus", "size", "upcase", "downcase", "capitalize", "join", "first", "last", "default", "strip" };
    private static readonly HashSet<string> OfTheLoop = new(StringComparer.Ordinal) { "forloop", "blank", "empty" };

    private readonly HashSet<string> _known;
    private readonly Stack<string> _loops = [];
    private readonly StringBuilder _words = new();
    private readonly SortedSet<string> _unknown = new(StringComparer.Ordinal);
    private readonly SortedSet<string> _refused = new(StringComparer.Ordinal);

    private TemplateLook(IEnumerable<string> known) => _known = new(known, StringComparer.Ordinal);

    /// <summary>Names that stand for nothing.</summary>
    public IReadOnlyCollection<string> Unknown => _unknown;

    /// <summary>What a letter may not do, as the writer would call it.</summary>
    public IReadOnlyCollection<string> Refused => _refused;

    /// <summary>The words that stand there, of all branches.</summary>
    public string Words => _words.ToString();

    public static TemplateLook At(IFluidTemplate template, IEnumerable<string> known)
    {
        var look = new TemplateLook(known);
        look.VisitTemplate(template);
        return look;
    }

    public override Statement Visit(Statement statement)
    {
        // A branch that is not there is visited too.
        if (statement is null) return statement!;
        if (statement is TextSpanStatement or OutputStatement or IfStatement or ElseIfStatement or ElseStatement or UnlessStatement or CaseStatement or WhenStatement or ForStatement
            or CommentStatement or BreakStatement or ContinueStatement or NoOpStatement) return base.Visit(statement);
        _refused.Add(statement.GetType().Name.Replace("Statement", "", StringComparison.Ordinal).ToLowerInvariant());
        return statement;
    }

    protected override Statement VisitTextSpanStatement(TextSpanStatement textSpanStatement)
    {
        _words.Append(textSpanStatement.Text.ToString());
        return base.VisitTextSpanStatement(textSpanStatement);
    }

    protected override Statement VisitForStatement(ForStatement forStatement)
    {
        if (forStatement.Range is not null) _refused.Add("counting loops");
        Visit(forStatement.Source);
        if (forStatement.Limit is { } limit) Visit(limit);
        if (forStatement.Offset is { } offset) Visit(offset);
        _loops.Push(forStatement.Identifier);
        if (_loops.Count > 2) _refused.Add("loops inside loops");
        foreach (var statement in forStatement.Statements) Visit(statement);
        if (forStatement.Else is { } otherwise) Visit(otherwise);
        _loops.Pop();
        return forStatement;
    }

    protected override Expression VisitMemberExpression(MemberExpression memberExpression)
    {
        if (memberExpression.Segments[0] is IdentifierSegment { Identifier: var name } && !_known.Contains(name) && !_loops.Contains(name) && !OfTheLoop.Contains(name)) _unknown.Add(name);
        if (memberExpression.Segments.Any(s => s is FunctionCallSegment)) _refused.Add("calls");
        foreach (var index in memberExpression.Segments.OfType<IndexerSegment>()) Visit(index.Expression);
        return memberExpression;
    }

    protected override Expression VisitFilterExpression(FilterExpression filterExpression)
    {
        if (!Filters.Contains(filterExpression.Name)) _refused.Add($"the filter \"{filterExpression.Name}\"");
        return base.VisitFilterExpression(filterExpression);
    }

    protected override Expression VisitRangeExpression(RangeExpression rangeExpression)
    {
        _refused.Add("counting loops");
        return rangeExpression;
    }
}
