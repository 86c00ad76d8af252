using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Checks.Algebra;
using CoachOffice.Drafting.Checks.Examples;

namespace CoachOffice.Drafting.Checks.Reach;

/// <summary>Drills no progression names, and progressions for faults that can never be worked on.</summary>
internal sealed class LadderReachCheck(ExampleOf examples) : ICheck
{
    public IEnumerable<Anomaly> Of(RuleBase rules)
    {
        var named = rules.Book.Progressions.SelectMany(p => p.Rungs).SelectMany(r => r.Drills).ToHashSet();
        foreach (var drill in rules.Book.Drills.Where(d => !named.Contains(d.Id)))
            yield return Found(rules.Place("drills", drill.Id.Value), "no progression names it, so it is never offered; name it in one or take it out", null);
        foreach (var (progression, fault) in rules.Book.Progressions.SelectMany(p => p.Faults, (p, fault) => (p, fault)))
        {
            if (WhyNever(rules.Book, fault) is { } why)
                yield return Found(rules.Place("progressions", progression.Id.Value), $"{fault} can never be a focus: {why}", Example(rules, fault));
        }
    }

    private static string? WhyNever(Rulebook book, FaultId fault)
    {
        var measure = book.Find(fault.Measure)!;
        if (measure.NoFaultSides.Contains(fault.Side)) return "that side is declared no fault; take it out of the progression";
        if (!book.Ranges.Any(r => r.Measure == fault.Measure && HasEdge(r, fault.Side))) return "no club has an edge on that side; give it one or take it out of the progression";
        return measure.StyleOnly && !book.Patterns.Any(p => p.Root.Contains(fault)) ? "it is style unless a pattern has it as its root, and none has" : null;
    }

    private static bool HasEdge(WantedRange range, Side side) => side == Side.Low ? range.FromGoal || range.Limits.Low is not null : range.Limits.High is not null;

    /// <summary>The fault as far out as it goes, which nobody works on.</summary>
    private Domain.Plans.LessonFacts? Example(RuleBase rules, FaultId fault)
    {
        var spaces = Enum.GetValues<Club>().Select(club => rules.Of(club));
        var regions = spaces.Select(s => new Region(s, [.. new[] { Box.Everything(s).And(fault.Measure, s.Of(fault.Measure).Where(f => f.Side == fault.Side && f.Weight >= 2)) }.OfType<Box>()]));
        return examples.In(regions, draft => draft.Focus.Count == 0 && draft.Parked.Any(p => p.Fault == fault));
    }

    private static Anomaly Found(AnomalyEntry entry, string sentence, LessonFacts? example) =>
        new() { Kind = AnomalyKind.Unreachable, Severity = AnomalySeverity.Warn, Entries = [entry], Sentence = sentence, Example = example };
}
