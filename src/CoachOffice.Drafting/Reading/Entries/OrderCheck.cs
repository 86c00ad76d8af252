using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading.Entries;

/// <summary>Checks over all patterns that causes never run in a circle and that what a pattern puts first is not what a law of order puts later.</summary>
internal sealed class OrderCheck(Rulebook book, FaultList faults)
{
    /// <summary>Looks at every pattern; <paramref name="roots"/> tells where each stands.</summary>
    public void Check(IReadOnlyDictionary<PatternId, Node> roots)
    {
        var causes = new CycleCheck("causes run");
        foreach (var pattern in book.Patterns)
        {
            foreach (var (from, to) in Edges(pattern)) causes.Add(from.ToString(), to.ToString(), roots[pattern.Id]);
            foreach (var later in pattern.Before.Select(id => book.Find(id)).OfType<Pattern>().Where(later => WaitsFor(pattern, later)))
                faults.Add(roots[pattern.Id], $"{pattern.Id.Value} is worked on before {later.Id.Value}, but a law of order lets {pattern.Root[0].Measure.Value} wait for {later.Root[0].Measure.Value}; take one of the two out");
        }

        causes.Report(faults);
    }

    /// <summary>Root to consequence, but never back in time: the drafter leaves such a link out.</summary>
    private IEnumerable<(FaultId From, FaultId To)> Edges(Pattern pattern) =>
        from root in pattern.Root
        from consequence in pattern.Explains.Concat(pattern.ExplainsIfPresent)
        where consequence != root && MomentOf(consequence) >= MomentOf(root)
        select (root, consequence);

    private Moment MomentOf(FaultId fault) => Causes.CauseGraph.RootMoment(book.Find(fault.Measure)!);

    private bool WaitsFor(Pattern first, Pattern later) =>
        first.Root.Any(root => later.Root.Any(after => new Ordering.TrainAfterLaws(book.TrainAfter).Waits(root.Measure, after.Measure)));
}
