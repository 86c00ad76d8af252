using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Checks.Algebra;
using CoachOffice.Drafting.Checks.Examples;
using CoachOffice.Drafting.Patterns;

namespace CoachOffice.Drafting.Checks.Conditions;

/// <summary>Conditions without which a pattern would fire in just the same lessons.</summary>
internal sealed class AlwaysTrueCheck(PatternsAtWork work) : ICheck
{
    public IEnumerable<Anomaly> Of(RuleBase rules) => rules.Book.Patterns.Where(work.CanFire).SelectMany(Of);

    private IEnumerable<Anomaly> Of(Pattern pattern)
    {
        var idle = Wanted(pattern).Where(part => work.CanFire(part.Others) && FiresNoMore(part.Others, pattern)).Select(part => part.Text)
            .Concat(pattern.Unless.Where(c => c is not OthersInRangeCondition && ShutsOutNothing(pattern, c)).Select(c => $"'unless {ConditionText.Of(c)}'"));
        foreach (var text in idle)
        {
            var example = work.Examples.In(work.Of(pattern), ExampleOf.Fires(pattern));
            yield return work.Found(AnomalyKind.AlwaysTrue, AnomalySeverity.Warn, $"{text} changes nothing, the rest of it says as much; leave it out", example, pattern);
        }

        foreach (var bound in pattern.When.Concat(pattern.Unless).SelectMany(Bounds).Where(b => SaysNoMore(pattern, b)))
            yield return work.Found(AnomalyKind.AlwaysTrue, AnomalySeverity.Warn, $"'{ConditionText.Of(bound)}' says no more than {bound.Measure.Value}.{Domain.Terms.Of(bound.Side)}, as the range ends there before; write that", null, pattern);
    }

    /// <summary>Without a part it fires nowhere else. Where it would fire nowhere at all, the part is what it rests on.</summary>
    private bool FiresNoMore(Pattern without, Pattern whole) => work.Answer("fires no more", () => work.Firing(whole).All(firing =>
    {
        // Both have the same `unless`, so only what is wanted can differ.
        var more = firing.Build(without);
        return (more with { Without = [.. firing.Of(whole).Within, .. more.Without] }).IsEmpty;
    }), without, whole);

    /// <summary>With every club that has a range, whatever is out on that side is also beyond the bound.</summary>
    private bool SaysNoMore(Pattern pattern, ValueCondition bound) => work.Answer($"says no more {ConditionText.Of(bound)}", () =>
        work.Of(pattern).Select(r => r.Space).Where(s => PatternEvaluator.SpeaksOf(pattern, s.Club)).Select(s => s.Of(bound.Measure)).ToList() is var spaces
        && spaces.TrueForAll(cells => cells.Where(bound) == cells.Where(f => f.IsOut && f.Side == bound.Side))
        && spaces.Exists(cells => !cells.Where(bound).IsZero), pattern);

    private static IEnumerable<ValueCondition> Bounds(Condition condition) =>
        condition is AnyOfCondition any ? any.Any.SelectMany(Bounds) : condition is ValueCondition bound ? [bound] : [];

    /// <summary>What it shuts out the rest does not reach, or the other conditions shut out as well.</summary>
    private bool ShutsOutNothing(Pattern pattern, Condition unless) => work.Answer($"shuts out nothing {ConditionText.Of(unless)}", () =>
    {
        var without = pattern with { Unless = [.. pattern.Unless.Where(c => c != unless)] };
        return work.Firing(pattern).All(firing => !firing.Build(without).Meets(new Region(firing.Space, firing.ShutOut(unless))));
    }, pattern);

    /// <summary>The pattern without each part it asks for; what counts other measures cannot be told by cells and is left alone.</summary>
    private static IEnumerable<(string Text, Pattern Others)> Wanted(Pattern pattern) =>
        pattern.When.Where(c => pattern.When.Count > 1 && c is not OthersInRangeCondition)
            .Select(c => ($"'{ConditionText.Of(c)}'", pattern with { When = [.. pattern.When.Where(o => o != c)] }))
            .Concat(pattern.Needs.Select(m => ($"'needs {m.Value}'", pattern with { Needs = [.. pattern.Needs.Where(o => o != m)] })));
}
