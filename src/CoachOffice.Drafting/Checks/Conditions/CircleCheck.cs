using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Checks.Algebra;
using CoachOffice.Drafting.Checks.Examples;

namespace CoachOffice.Drafting.Checks.Conditions;

/// <summary>Entries that lead back to themselves: the order of work, where `before` and train-after close a circle only together, and patterns that stand over each other. Circles of one kind alone, and of causes, the reader refuses.</summary>
internal sealed class CircleCheck(PatternsAtWork work) : ICheck
{
    public IEnumerable<Anomaly> Of(RuleBase rules) => Order(rules).Concat(Over(rules.Book));

    private IEnumerable<Region> AllFire(List<Pattern> patterns)
    {
        var together = work.Of(patterns[0]);
        foreach (var pattern in patterns.Skip(1)) together = [.. together.Zip(work.Of(pattern), (a, b) => a.And(b))];
        return together;
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
                Example = patterns.Count == 0 ? null : work.Examples.In(AllFire(patterns), ExampleOf.Fires(patterns)),
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
            yield return work.Found(AnomalyKind.Circle, AnomalySeverity.Refuse, $"they stand over each other: {Printed(circle)}; take one 'over' out", work.Examples.In(AllFire(patterns), ExampleOf.Fires(patterns)), patterns);
        }
    }

    private static string Printed(IReadOnlyList<string> circle) => string.Join(" -> ", circle.Append(circle[0]));
}
