using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting.Checks.Algebra;
using CoachOffice.Drafting.Checks.Examples;

namespace CoachOffice.Drafting.Checks.Conditions;

/// <summary>Patterns that leave no drill for what they find: one that withholds its own root's drills whenever it fires, or two that withhold each other's. The second is only told: a draft settles it by withholding, and says so.</summary>
internal sealed class OppositeDrillsCheck(PatternsAtWork work) : ICheck
{
    private static readonly Stage[] TaughtStages = [Stage.Rehearse, Stage.Half, Stage.Full];

    private readonly Dictionary<FaultId, List<Drill>> _drills = [];

    public IEnumerable<Anomaly> Of(RuleBase rules)
    {
        var able = rules.Book.Patterns.Where(work.CanFire).Select(p => new Demand(p, work)).ToList();
        var sound = able.Where(d => !IsStuck(d, d)).ToList();
        foreach (var demand in able.Except(sound))
            yield return Found(AnomalySeverity.Refuse, "whenever it fires, every drill for its root is withheld, as it pushes a fault that is out or is forbidden by the pattern; take a forbids, an opposite or a drill out", work.Of(demand.Pattern), demand.Pattern);
        foreach (var (one, other) in sound.SelectMany((one, i) => sound.Skip(i + 1).Select(other => (one, other))))
        {
            if (!IsStuck(one, other) || !IsStuck(other, one) || Explain(one.Pattern, other.Pattern) || !work.Meet(one.Pattern, other.Pattern)) continue;
            yield return Found(AnomalySeverity.Warn, "when both fire, the drills for each root are withheld because of the other, and nothing is left to work on; let one explain, stand over or come before the other, or change a drill", work.Together(one.Pattern, other.Pattern), one.Pattern, other.Pattern);
        }
    }

    /// <summary>Whatever the root, every drill for it is withheld by the two patterns, whenever both fire.</summary>
    private bool IsStuck(Demand demand, Demand beside) =>
        demand.Pattern.Root.All(root => Drills(root) is { Count: > 0 } drills && drills.TrueForAll(d => Withheld(d, demand) || Withheld(d, beside) || d.Opposites.Contains(root)));

    private static bool Withheld(Drill drill, Demand by) => drill.Trains.Any(by.Pattern.Forbids.Contains) || drill.Opposites.Any(by.AlwaysOut.Contains);

    private List<Drill> Drills(FaultId root)
    {
        if (!_drills.TryGetValue(root, out var known)) _drills.Add(root, known = [.. Taught(root)]);
        return known;
    }

    private IEnumerable<Drill> Taught(FaultId root) =>
        (work.Rules.Book.For(root)?.Rungs ?? []).Where(r => TaughtStages.Contains(r.Stage)).SelectMany(r => r.Drills).Distinct().Select(id => work.Rules.Book.Find(id)!);

    /// <summary>One of them explains the other's root or gives way to it, so that only one is worked on.</summary>
    private static bool Explain(Pattern one, Pattern other) =>
        PatternsAtWork.Explained(one).Intersect(other.Root).Any() || PatternsAtWork.Explained(other).Intersect(one.Root).Any()
        || one.Over.Contains(other.Id) || other.Over.Contains(one.Id);

    private Anomaly Found(AnomalySeverity severity, string sentence, IReadOnlyList<Region> regions, params IReadOnlyList<Pattern> patterns)
    {
        bool Shows(Draft draft) => ExampleOf.Fires(patterns)(draft) && !draft.Stages.Any(s => TaughtStages.Contains(s.Stage) && patterns.Any(p => p.Root.Contains(s.Fault)));
        return work.Found(AnomalyKind.Conflict, severity, sentence, work.Examples.In(regions, Shows), patterns);
    }
}
