using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Checks.Reach;

/// <summary>Drills that train only what no measure can answer for: without a step, or without an edge on that side for any club, nothing says when the work is done. Drills that train nothing by name go by results.</summary>
internal sealed class GateCheck : ICheck
{
    public IEnumerable<Anomaly> Of(RuleBase rules) =>
        rules.Book.Drills.Where(d => d.Trains.Count > 0 && !d.Trains.Any(fault => Answers(rules.Book, fault))).Select(drill => new Anomaly
        {
            Kind = AnomalyKind.NoGate,
            Severity = AnomalySeverity.Warn,
            Entries = [rules.Place("drills", drill.Id.Value)],
            Sentence = $"no measure can say that it worked, as none of {string.Join(", ", drill.Trains)} has an edge to reach; give the measure a range on that side or train another fault",
        });

    private static bool Answers(Rulebook book, FaultId fault) =>
        book.Find(fault.Measure) is { Step: not null } measure && !measure.NoFaultSides.Contains(fault.Side)
        && book.Ranges.Any(r => r.Measure == fault.Measure && (fault.Side == Side.Low ? r.FromGoal || r.Limits.Low is not null : r.Limits.High is not null));
}
