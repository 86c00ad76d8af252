using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Checks.Conditions;

/// <summary>Patterns that say the same, one that is never heard beside a wider one, and two between which only the alphabet decides.</summary>
internal sealed class TwicePatternsCheck(PatternsAtWork work) : ICheck
{
    public IEnumerable<Anomaly> Of(RuleBase rules)
    {
        var able = rules.Book.Patterns.Where(work.CanFire).ToList();
        foreach (var (one, other) in able.SelectMany((one, i) => able.Skip(i + 1).Select(other => (one, other))))
        {
            var found = SaidTwice(one, other) ?? Unheard(one, other) ?? Unheard(other, one) ?? Tied(one, other);
            if (found is not null) yield return found;
        }
    }

    private Anomaly? SaidTwice(Pattern one, Pattern other)
    {
        if (!one.Root.SequenceEqual(other.Root) || !work.Implies(one, other) || !work.Implies(other, one)) return null;
        var same = PatternsAtWork.Explained(one).ToHashSet().SetEquals(PatternsAtWork.Explained(other));
        return Found(AnomalyKind.SaidTwice, same ? AnomalySeverity.Refuse : AnomalySeverity.Warn, same ? "fire in the same lessons and say the same of them; take one out" : "fire in the same lessons with the same root; make one of them", one, other);
    }

    /// <summary>The narrow one fires only beside the wide one, has nothing to add, and comes after it.</summary>
    private Anomaly? Unheard(Pattern narrow, Pattern wide)
    {
        if (!narrow.Root.SequenceEqual(wide.Root) || !work.Implies(narrow, wide)) return null;
        if (narrow.Over.Contains(wide.Id) || PatternsAtWork.Explained(narrow).Except(PatternsAtWork.Explained(wide)).Any()) return null;
        if (!wide.Over.Contains(narrow.Id) && !Precedes(wide, narrow)) return null;
        var why = wide.Over.Contains(narrow.Id) ? "stands over it" : "comes first";
        return Found(AnomalyKind.InsideAnother, AnomalySeverity.Warn, $"whenever {narrow.Id.Value} fires, {wide.Id.Value} fires too and {why}, so {narrow.Id.Value} is never heard; give it the smaller precedence or take it out", narrow, wide);
    }

    private Anomaly? Tied(Pattern one, Pattern other)
    {
        if (one.Precedence != other.Precedence || one.Over.Contains(other.Id) || other.Over.Contains(one.Id) || one.Root.Intersect(other.Root).Any()) return null;
        var both = PatternsAtWork.Explained(one).Intersect(PatternsAtWork.Explained(other)).Order().ToList();
        var claimed = both.Where(fault => work.MeetWith(fault, one, other)).ToList();
        if (claimed.Count == 0) return null;
        var regions = work.Together(one, other).Select(r => r.Out(claimed[0]));
        var example = work.Examples.In(regions, draft => new[] { one, other }.All(p => draft.Causes.Any(c => c.Pattern == p.Id.Value && c.Explains.Contains(claimed[0]))));
        return example is null ? null : work.Found(AnomalyKind.Conflict, AnomalySeverity.Warn, $"both explain {claimed[0]} with the precedence {one.Precedence}, so only the alphabet says which is named its cause; give them different precedences", example, one, other);
    }

    private Anomaly Found(AnomalyKind kind, AnomalySeverity severity, string sentence, Pattern one, Pattern other) =>
        work.Found(kind, severity, sentence, work.Examples.In(work.Together(one, other), Examples.ExampleOf.Fires(one, other)), one, other);

    private static bool Precedes(Pattern one, Pattern other) =>
        one.Precedence != other.Precedence ? one.Precedence < other.Precedence : string.CompareOrdinal(one.Id.Value, other.Id.Value) < 0;
}
