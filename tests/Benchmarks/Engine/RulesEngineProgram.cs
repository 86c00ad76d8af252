using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Patterns;
using RulesEngine.Models;

namespace CoachOffice.Benchmarks.Engine;

/// <summary>Which patterns fire, by Microsoft's RulesEngine: what a user would take who wants rules in files without writing a drafter. It says nothing of near-misses.</summary>
internal sealed class RulesEngineProgram
{
    private const string Workflow = "patterns";

    private readonly RulesEngine.RulesEngine _engine;
    private readonly Rulebook _book;

    public RulesEngineProgram(Rulebook book)
    {
        _book = book;
        var text = new RuleText(book);
        var workflow = new Workflow
        {
            WorkflowName = Workflow,
            Rules = [.. book.Patterns.Select(p => new Rule { RuleName = p.Id.Value, Expression = text.Of(p), RuleExpressionType = RuleExpressionType.LambdaExpression })],
        };
        _engine = new RulesEngine.RulesEngine([workflow], new ReSettings { CustomTypes = [typeof(RuleLesson)], UseFastExpressionCompiler = true });
    }

    /// <summary>Ids of the patterns that hold, as they come.</summary>
    public List<string> Fire(LessonContext context)
    {
        var results = _engine.ExecuteAllRulesAsync(Workflow, new RuleParameter("lesson", new RuleLesson(context, _book))).AsTask().GetAwaiter().GetResult();
        var fired = new List<string>();
        foreach (var result in results)
        {
            if (result.IsSuccess) fired.Add(result.Rule.RuleName);
            else if (result.ExceptionMessage is { Length: > 0 } wrong) throw new InvalidOperationException(wrong);
        }

        return fired;
    }
}
