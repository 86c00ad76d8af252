using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Checks.Examples;
using CoachOffice.Drafting.Patterns;

namespace CoachOffice.Drafting.Checks.Conditions;

/// <summary>Patterns, and ways of an `any`, that no swing can meet: thresholds that exclude each other, a `needs` that `when` contradicts, an `unless` that `when` implies, clubs without a range.</summary>
internal sealed class NeverTrueCheck(PatternsAtWork work) : ICheck
{
    public IEnumerable<Anomaly> Of(RuleBase rules) => rules.Book.Patterns.SelectMany(p => work.CanFire(p) ? DeadWays(p) : [Dead(p)]);

    private Anomaly Dead(Pattern pattern)
    {
        if (pattern.When.Where(c => c is OutCondition or ValueCondition or SameSideCondition).FirstOrDefault(c => NeverHolds(pattern, c)) is { } none)
            return Found($"never fires: '{ConditionText.Of(none)}' is reached with no club it speaks of; give the measure a range there or take the condition out", null, pattern);
        var part = Parts(pattern).FirstOrDefault(part => work.CanFire(part.Others));
        if (part.Others is null) return Found("never fires: its conditions exclude each other; take some of them out", null, pattern);
        var example = work.Examples.In(work.Varied(part.Others), ExampleOf.NearlyFires(pattern, $"{(part.IsUnless ? "unless" : "not")}: {part.Text}"));
        return Found($"never fires: '{(part.IsUnless ? "unless " : "")}{part.Text}' and the rest of it exclude each other; take one of the two out", example, pattern);
    }

    private Anomaly Found(string sentence, LessonFacts? example, Pattern pattern) =>
        work.Found(AnomalyKind.NeverTrue, AnomalySeverity.Refuse, sentence, example, pattern);

    private bool NeverHolds(Pattern pattern, Condition alone) => !work.CanFire(pattern with { When = [alone], Needs = [], Unless = [] });

    private IEnumerable<Anomaly> DeadWays(Pattern pattern)
    {
        foreach (var any in pattern.When.OfType<AnyOfCondition>())
        {
            foreach (var way in any.Any.Where(way => !work.CanFire(pattern with { When = [.. pattern.When.Select(c => c == any ? way : c)] })))
                yield return work.Found(AnomalyKind.NeverTrue, AnomalySeverity.Warn, $"{ConditionText.Of(way)} can never be the reason it fires; leave it out of 'any'", null, pattern);
        }

        foreach (var club in pattern.Clubs.Where(club => !work.CanFire(pattern with { Clubs = [club] })))
            yield return work.Found(AnomalyKind.NeverTrue, AnomalySeverity.Warn, $"never fires with the {Domain.Terms.Of(club)}; leave the club out or give its measures a range", null, pattern);
    }

    /// <summary>The pattern without each of its parts.</summary>
    private static IEnumerable<(string Text, bool IsUnless, Pattern Others)> Parts(Pattern pattern) =>
        pattern.Unless.Select(c => (ConditionText.Of(c), true, pattern with { Unless = [.. pattern.Unless.Where(o => o != c)] }))
            .Concat(pattern.Needs.Select(m => (ConditionText.Of(new StateCondition(m, MeasureState.InRange)), false, pattern with { Needs = [.. pattern.Needs.Where(o => o != m)] })))
            .Concat(pattern.When.Select(c => (ConditionText.Of(c), false, pattern with { When = [.. pattern.When.Where(o => o != c)] })));
}
