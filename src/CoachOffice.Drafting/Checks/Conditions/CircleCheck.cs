using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Causes;
using CoachOffice.Drafting.Checks.Algebra;
using CoachOffice.Drafting.Checks.Examples;

namespace CoachOffice.Drafting.Checks.Conditions;

/// <summary>Entries that lead back to themselves: causes, the order of work (`before` together with train-after), and patterns that stand over each other.</summary>
internal sealed class CircleCheck(PatternsAtWork work) : ICheck
{
    public IEnumerable<Anomaly> Of(RuleBase rules) => Causes(rules.Book).Concat(Order(rules)).Concat(Over(rules.Book));

    /// <summary>The drafter cuts a circle of causes open at its weakest edge, which the author should not leave to it.</summary>
    private IEnumerable<Anomaly> Causes(Rulebook book)
    {
        var edges = book.Patterns.Where(work.CanFire).SelectMany(p => p.Root.SelectMany(_ => PatternsAtWork.Explained(p), (root, fault) => (Root: root, Fault: fault, Pattern: p)))
            .Where(e => book.Find(e.Fault.Measure)!.Moment >= CauseGraph.RootMoment(book.Find(e.Root.Measure)!)).ToList();
        foreach (var circle in Circles.In(edges.Select(e => (e.Root.ToString(), e.Fault.ToString()))))
        {
            var links = circle.Select((from, i) => edges.Where(e => e.Root.ToString() == from && e.Fault.ToString() == circle[(i + 1) % circle.Count]).Select(e => e.Pattern).MinBy(p => p.Precedence)!).Distinct().ToList();
            var example = work.Examples.In(AllOut(links, circle), draft => ExampleOf.Fires(links)(draft) && draft.Trace.Any(t => t.Rule == "causes:circle"));
            if (example is not null)
                yield return work.Found(AnomalyKind.Circle, AnomalySeverity.Warn, $"the causes go round: {Printed(circle)}; the weakest of them is dropped, so take the wrong one out", example, links);
        }
    }

    private IEnumerable<Region> AllOut(List<Pattern> links, IReadOnlyList<string> circle)
    {
        var together = work.Of(links[0]);
        foreach (var link in links.Skip(1)) together = [.. together.Zip(work.Of(link), (a, b) => a.And(b))];
        return together.Select(r => circle.Select(FaultId.Parse).Aggregate(r, (region, fault) => region.Out(fault)));
    }

    private IEnumerable<Anomaly> Order(RuleBase rules)
    {
        var book = rules.Book;
        var laws = book.TrainAfter.SelectMany(t => t.After, (t, first) => (From: first.Value, To: t.Work.Value)).ToList();
        var before = book.Patterns.SelectMany(p => p.Before.Select(id => book.Find(id)!).SelectMany(later => Pairs(p, later), (_, pair) => (pair.From, pair.To, By: p))).ToList();
        foreach (var circle in Circles.In(laws.Concat(before.Select(b => (b.From, b.To)))))
        {
            var links = circle.Select((from, i) => (From: from, To: circle[(i + 1) % circle.Count])).ToList();
            var patterns = before.Where(b => links.Contains((b.From, b.To))).Select(b => b.By).Distinct().ToList();
            var works = links.Where(laws.Contains).Select(l => rules.Place("train-after", l.To));
            yield return new Anomaly
            {
                Kind = AnomalyKind.Circle,
                Severity = AnomalySeverity.Refuse,
                Entries = [.. patterns.Select(rules.Place), .. works],
                Sentence = $"the order of work goes round, each to be trained before the next: {Printed(circle)}; take one link out",
                Example = patterns.Count == 0 ? null : work.Examples.In(AllOut(patterns, []), ExampleOf.Fires(patterns)),
            };
        }
    }

    private static IEnumerable<(string From, string To)> Pairs(Pattern first, Pattern later) =>
        first.Root.SelectMany(_ => later.Root, (one, two) => (one.Measure.Value, two.Measure.Value));

    private IEnumerable<Anomaly> Over(Rulebook book)
    {
        foreach (var circle in Circles.In(book.Patterns.SelectMany(p => p.Over, (p, other) => (p.Id.Value, other.Value))))
        {
            var patterns = circle.Select(id => book.Find(PatternId.From(id))!).ToList();
            yield return work.Found(AnomalyKind.Circle, AnomalySeverity.Refuse, $"they stand over each other: {Printed(circle)}; take one 'over' out", work.Examples.In(AllOut(patterns, []), ExampleOf.Fires(patterns)), patterns);
        }
    }

    private static string Printed(IReadOnlyList<string> circle) => string.Join(" -> ", circle.Append(circle[0]));
}
