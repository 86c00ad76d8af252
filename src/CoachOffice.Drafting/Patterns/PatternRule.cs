using System.Linq.Expressions;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using NRules.RuleModel;
using NRules.RuleModel.Builders;

namespace CoachOffice.Drafting.Patterns;

/// <summary>Builds the one rule of one pattern. Findings are joined by the engine; what speaks of the lesson as a whole is asked of the lesson's context.</summary>
internal sealed class PatternRule
{
    private readonly Pattern _pattern;
    private readonly RuleBuilder _rule = new();
    private readonly ParameterExpression _lesson = Expression.Parameter(typeof(LessonContext), "lesson");
    private readonly PatternBuilder _lessonPattern;
    private int _names;

    private PatternRule(Pattern pattern, int depth)
    {
        _pattern = pattern;
        _rule.Name(NameOf(pattern.Id));
        _rule.Description(pattern.Name);
        _rule.Priority(-depth);
        _lessonPattern = _rule.LeftHandSide().Pattern(typeof(LessonContext), _lesson.Name!);
    }

    public static string NameOf(PatternId id) => $"pattern:{id.Value}";

    /// <summary>The rule of a pattern; patterns it names under `unless` have a smaller depth and so fire first.</summary>
    public static IRuleDefinition Build(Pattern pattern, int depth)
    {
        var rule = new PatternRule(pattern, depth);
        rule.AddClubs();
        foreach (var condition in pattern.When) rule.AddWhen(condition);
        foreach (var measure in pattern.Needs) rule.AddWhen(new StateCondition(measure, MeasureState.InRange));
        foreach (var condition in pattern.Unless) rule.AddUnless(condition);
        rule.AddOneAtLeastModerate();
        rule.AddAction();
        return rule._rule.Build();
    }

    private void AddClubs()
    {
        if (_pattern.Clubs.Count == 0) return;
        var club = Expression.Property(_lesson, nameof(LessonContext.Club));
        OfLesson(_pattern.Clubs.Select(c => (Expression)Expression.Equal(club, Expression.Constant(c))).Aggregate(Expression.OrElse));
    }

    private void AddWhen(Condition condition)
    {
        if (condition is SameSideCondition same) AddSameSide(same);
        else if (condition is AnyOfCondition any && AnyOfOneFinding(any) is { } tests) Exists(tests);
        else if (condition is StateCondition { State: MeasureState.NotInRange } open) None(f => [FindingExpressions.IsMeasure(f, open.Measure), FindingExpressions.IsInRange(f)]);
        else if (condition is StateCondition { State: MeasureState.NotMeasured } unread) None(f => [FindingExpressions.IsMeasure(f, unread.Measure)]);
        else if (Probe(condition) is not null) Exists(f => FindingExpressions.Of(condition, f)!);
        else OfLesson(LessonExpressions.Holds(_lesson, _pattern, condition));
    }

    private void AddUnless(Condition condition)
    {
        if (condition is AnyOfCondition any) foreach (var branch in any.Any) AddUnless(branch);
        else if (condition is FiredCondition fired) NoneFired(fired.Pattern);
        else if (condition is StateCondition { State: MeasureState.NotInRange } open)
            None(f => [FindingExpressions.IsMeasure(f, open.Measure), Expression.Not(FindingExpressions.IsInRange(f))]);
        else if (condition is StateCondition { State: MeasureState.NotMeasured } unread) Exists(f => [FindingExpressions.IsMeasure(f, unread.Measure)]);
        else if (Probe(condition) is not null) None(f => FindingExpressions.Of(condition, f)!);
        else OfLesson(Expression.Not(LessonExpressions.Holds(_lesson, _pattern, condition)));
    }

    private void AddSameSide(SameSideCondition same)
    {
        var all = same.Measures.Select(m => Finding(f => [FindingExpressions.IsMeasure(f, m), FindingExpressions.WeightAtLeast(f, 1)])).ToList();
        foreach (var (pattern, finding) in all.Skip(1))
        {
            var alike = Expression.Equal(FindingExpressions.Property(all[0].Parameter, nameof(Domain.Measuring.Finding.Side)), FindingExpressions.Property(finding, nameof(Domain.Measuring.Finding.Side)));
            pattern.Condition(Expression.Lambda(alike, all[0].Parameter, finding));
        }
    }

    private void AddOneAtLeastModerate()
    {
        var name = NewParameter();
        var leaves = _pattern.When.SelectMany(c => LessonExpressions.Leaves(_lesson, _pattern, c, name)).ToList();
        if (leaves.Count == 0)
        {
            // Nothing it asks for is out of range, so nothing is at least moderate.
            OfLesson(Expression.Constant(false));
            return;
        }

        var pattern = _rule.LeftHandSide().Exists().Pattern(typeof(Finding), name.Name!);
        pattern.Condition(Expression.Lambda(FindingExpressions.WeightAtLeast(name, 2), name));
        var any = leaves.Aggregate(Expression.OrElse);
        pattern.Condition(LessonExpressions.Uses(any, _lesson) ? Expression.Lambda(any, _lesson, name) : Expression.Lambda(any, name));
    }

    private void AddAction()
    {
        var context = Expression.Parameter(typeof(IContext), "context");
        var call = Expression.Call(typeof(PatternRule).GetMethod(nameof(Fire))!, context, Expression.Constant(_pattern));
        _rule.RightHandSide().Action(Expression.Lambda(call, context), ActionTrigger.Activated);
    }

    /// <summary>What a rule does when it fires; public because compiled expressions call it.</summary>
    public static void Fire(IContext context, Pattern pattern) => context.InsertLinked(pattern.Id.Value, new FiredPattern(pattern.Id));

    private static IReadOnlyList<Expression>? Probe(Condition condition) => FindingExpressions.Of(condition, Expression.Parameter(typeof(Finding), "f"));

    private static Func<ParameterExpression, IReadOnlyList<Expression>>? AnyOfOneFinding(AnyOfCondition any) =>
        any.Any.All(b => Probe(b) is not null) ? f => [any.Any.Select(b => FindingExpressions.All(FindingExpressions.Of(b, f)!)).Aggregate(Expression.OrElse)] : null;

    private ParameterExpression NewParameter() => Expression.Parameter(typeof(Finding), $"f{_names++}");

    private (PatternBuilder Pattern, ParameterExpression Parameter) Finding(Func<ParameterExpression, IReadOnlyList<Expression>> tests) =>
        Add(_rule.LeftHandSide().Pattern, tests);

    private void Exists(Func<ParameterExpression, IReadOnlyList<Expression>> tests) => Add(_rule.LeftHandSide().Exists().Pattern, tests);

    private void None(Func<ParameterExpression, IReadOnlyList<Expression>> tests) => Add(_rule.LeftHandSide().Not().Pattern, tests);

    private (PatternBuilder Pattern, ParameterExpression Parameter) Add(Func<Type, string, PatternBuilder> into, Func<ParameterExpression, IReadOnlyList<Expression>> tests)
    {
        var parameter = NewParameter();
        var pattern = into(typeof(Finding), parameter.Name!);
        foreach (var test in tests(parameter)) pattern.Condition(Expression.Lambda(test, parameter));
        return (pattern, parameter);
    }

    private void NoneFired(PatternId id)
    {
        var fired = Expression.Parameter(typeof(FiredPattern), $"f{_names++}");
        var pattern = _rule.LeftHandSide().Not().Pattern(typeof(FiredPattern), fired.Name!);
        pattern.Condition(Expression.Lambda(Expression.Equal(Expression.Property(fired, nameof(FiredPattern.Pattern)), Expression.Constant(id.Value)), fired));
    }

    private void OfLesson(Expression test) => _lessonPattern.Condition(Expression.Lambda(test, _lesson));
}
