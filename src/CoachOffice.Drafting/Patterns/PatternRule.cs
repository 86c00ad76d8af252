using System.Linq.Expressions;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using NRules.RuleModel;
using NRules.RuleModel.Builders;

namespace CoachOffice.Drafting.Patterns;

/// <summary>Builds the one rule of one pattern: the engine joins the findings that must be out, and where they are all there it asks their lesson for the rest.</summary>
internal sealed class PatternRule
{
    private readonly Pattern _pattern;
    private readonly FaultFacts _facts;
    private readonly RuleBuilder _rule = new();

    private PatternRule(Pattern pattern, FaultFacts facts)
    {
        (_pattern, _facts) = (pattern, facts);
        _rule.Name(NameOf(pattern.Id));
        _rule.Description(pattern.Name);
        _rule.Priority(-facts.DepthOf(pattern));
    }

    public static string NameOf(PatternId id) => $"pattern:{id.Value}";

    /// <summary>The rule of a pattern; patterns it names under `unless` have a smaller depth and so fire first.</summary>
    public static IRuleDefinition Build(Pattern pattern, FaultFacts facts)
    {
        var rule = new PatternRule(pattern, facts);
        if (facts.Of(pattern) is { Count: > 0 } faults) rule.AddFindings(faults);
        else rule.AddLesson();
        foreach (var (fired, i) in pattern.Unless.SelectMany(PatternDepths.Named).Select((id, i) => (id, i))) rule.NoneFired(fired, i);
        rule.AddAction();
        return rule._rule.Build();
    }

    private void AddFindings(IReadOnlyList<(int Row, Side Side)> faults)
    {
        // A test of more than one finding hangs on a join, so a single one is joined with itself.
        var findings = faults.Concat(faults.Count == 1 ? faults : []).Select(Finding).ToList();
        var (last, finding) = findings[^1];
        var whole = new LessonExpressions(_facts, _pattern, Expression.Property(finding, nameof(SeenFinding.Lesson))).Whole();
        last.Condition(Expression.Lambda(whole, findings[^2].Parameter, finding));
    }

    /// <summary>No one finding must be out, so the lesson is asked for everything.</summary>
    private void AddLesson()
    {
        var lesson = Expression.Parameter(typeof(LessonContext), "lesson");
        _rule.LeftHandSide().Pattern(typeof(LessonContext), lesson.Name!).Condition(Expression.Lambda(new LessonExpressions(_facts, _pattern, lesson).Whole(), lesson));
    }

    /// <summary>Tests of one finding are small and hold constants only, so that equal ones of different rules are one node.</summary>
    private (PatternBuilder Pattern, ParameterExpression Parameter) Finding((int Row, Side Side) fault, int number)
    {
        var finding = Expression.Parameter(typeof(SeenFinding), $"f{number}");
        var pattern = _rule.LeftHandSide().Pattern(typeof(SeenFinding), finding.Name!);
        pattern.Condition(Expression.Lambda(Expression.Equal(Expression.Property(finding, nameof(SeenFinding.Row)), Expression.Constant(fault.Row)), finding));
        if (fault.Side != Side.None) pattern.Condition(Expression.Lambda(Expression.Equal(Expression.Property(finding, nameof(SeenFinding.Side)), Expression.Constant(fault.Side)), finding));
        return (pattern, finding);
    }

    private void NoneFired(PatternId id, int number)
    {
        var fired = Expression.Parameter(typeof(FiredPattern), $"fired{number}");
        var pattern = _rule.LeftHandSide().Not().Pattern(typeof(FiredPattern), fired.Name!);
        pattern.Condition(Expression.Lambda(Expression.Equal(Expression.Property(fired, nameof(FiredPattern.Pattern)), Expression.Constant(id.Value)), fired));
    }

    private void AddAction()
    {
        var context = Expression.Parameter(typeof(IContext), "context");
        var deed = _facts.IsNamed(_pattern.Id) ? Expression.Call(typeof(PatternRule), nameof(Tell), [], context, Expression.Constant(_pattern.Id.Value)) : Expression.Call(typeof(PatternRule), nameof(Rest), [], context);
        _rule.RightHandSide().Action(Expression.Lambda(deed, context), ActionTrigger.Activated);
    }

    /// <summary>What a rule does that another asks for; public because compiled expressions call it.</summary>
    public static void Tell(IContext context, string pattern) => context.InsertLinked(pattern, new FiredPattern(PatternId.From(pattern)));

    /// <summary>A rule nobody asks for has nothing to tell: that it fired is heard from the session.</summary>
    public static void Rest(IContext context)
    {
    }
}
