using System.Globalization;
using System.Text;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.Benchmarks.Engine;

/// <summary>
/// Patterns nobody teaches by, the same at every run, over the measures, ranges, drills and progressions of the shipped rulebook. Their shares of conditions, `any`, `needs`, `unless`
/// and `explains` are about those of the shipped patterns; a root is always one that a shipped pattern has, and consequences lie further down the table of measures, so that no circle comes of it.
/// </summary>
internal sealed class GeneratedRules
{
    private const int Seed = 20261126;

    /// <summary>So many measures further down are drawn for each pattern; its conditions and consequences are among them.</summary>
    private const int Consequences = 8;

    private readonly RulebookText _shipped;
    private readonly Random _chance = new(Seed);
    private readonly List<Fault> _faults;
    private readonly List<Fault> _roots;
    private readonly List<string> _ids = [];

    public GeneratedRules(RulebookText shipped)
    {
        _shipped = shipped;
        var book = RulebookReader.Load(shipped).Value.Book;
        var roots = book.Patterns.SelectMany(p => p.Root).ToHashSet();
        _faults = [.. from measure in book.Measures
                      from side in new[] { Side.Low, Side.High }
                      where measure.Step is not null && !measure.NoFaultSides.Contains(side) && book.Ranges.Any(r => r.Measure == measure.Id && HasEdge(r, side))
                      select new Fault(measure.Id.Value, measure.Row, side, roots.Contains(new FaultId(measure.Id, side)))];
        _roots = [.. _faults.Where(f => f.IsRoot && _faults.Where(other => other.Row > f.Row).DistinctBy(other => other.Measure).Count() >= Consequences)];
    }

    /// <summary>The shipped rules with so many generated patterns in the place of theirs.</summary>
    public RulebookText Only(int count) => RulebookText.Of(_shipped.Files.Where(f => !f.Key.StartsWith("patterns/", StringComparison.Ordinal) && !f.Key.StartsWith("cases/", StringComparison.Ordinal)).Append(KeyValuePair.Create("patterns/generated.yaml", $"patterns:\n{string.Concat(Take(count))}")));

    /// <summary>So many more patterns, each as an entry of a list of patterns.</summary>
    public IReadOnlyList<string> Take(int count) => [.. Enumerable.Range(0, count).Select(_ => One())];

    private static bool HasEdge(WantedRange range, Side side) => side == Side.Low ? range.Limits.Low is not null : range.Limits.High is not null;

    private string One()
    {
        var root = OneOf(_roots);
        var further = _faults.Where(f => f.Row > root.Row).ToArray();
        _chance.Shuffle(further);
        var consequences = further.DistinctBy(f => f.Measure).Take(Consequences).ToList();
        var id = string.Create(CultureInfo.InvariantCulture, $"generated-{_ids.Count + 1:0000}");
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"  - id: {id}\n    name: Generated cause {_ids.Count + 1}\n    precedence: {10 + _ids.Count}\n");
        if (Happens(12)) text.Append("    clubs: [").Append(Happens(50) ? "driver" : "iron, wedge").Append("]\n");
        When(text, root, consequences);
        if (Happens(12)) List(text, "needs", consequences[6..].Take(Happens(70) ? 1 : 2).Select(f => f.Measure));
        Unless(text, consequences);
        text.Append(CultureInfo.InvariantCulture, $"    root: {root}\n");
        List(text, "explains", consequences.Take(_chance.Next(1, 4)).Select(f => f.ToString()));
        if (Happens(48)) List(text, "explains-if-present", consequences[3..5].Take(_chance.Next(1, 3)).Select(f => f.ToString()));
        if (Happens(13) && _ids.Count > 0) List(text, "over", [OneOf(_ids)]);
        if (Happens(9)) List(text, "forbids", [consequences[5].ToString()]);
        if (Happens(48)) text.Append("    unread: suggest\n");
        text.Append(CultureInfo.InvariantCulture, $"    because: Generated cause {_ids.Count + 1} comes first.\n    rationale: Made to measure the program, not to teach by.\n    source: common practice\n\n");
        _ids.Add(id);
        return text.ToString();
    }

    /// <summary>The root and mostly one more condition, as often an `any` as a plain one; now and then a third that is a matter of counts.</summary>
    private void When(StringBuilder text, Fault root, List<Fault> consequences)
    {
        text.Append(CultureInfo.InvariantCulture, $"    when:\n      - {root}{(Happens(8) ? " at least moderate" : "")}\n");
        if (Happens(42)) text.Append(CultureInfo.InvariantCulture, $"      - any: [{string.Join(", ", consequences.Take(_chance.Next(2, 4)))}]\n");
        else if (Happens(90)) text.Append(CultureInfo.InvariantCulture, $"      - {consequences[0]}{(Happens(8) ? " at least moderate" : "")}\n");
        if (Happens(15)) text.Append(CultureInfo.InvariantCulture, $"      - {consequences[3]}\n");
        if (Happens(4)) text.Append("      - at least 4 others in range\n");
        else if (Happens(4)) text.Append(CultureInfo.InvariantCulture, $"      - {root.Measure} read at least 4 times\n");
    }

    private void Unless(StringBuilder text, List<Fault> consequences)
    {
        if (Happens(35)) return;
        var items = consequences[4..].Take(_chance.Next(1, 4)).Select(f => Happens(50) ? $"{f.Measure} in range" : $"{f}").ToList();
        if (Happens(60) && _ids.Count > 0) items[^1] = $"pattern {OneOf(_ids)}";
        List(text, "unless", items);
    }

    private static void List(StringBuilder text, string name, IEnumerable<string> items) => text.Append(CultureInfo.InvariantCulture, $"    {name}: [{string.Join(", ", items)}]\n");

    private bool Happens(int percent) => _chance.Next(100) < percent;

    private T OneOf<T>(List<T> items) => items[_chance.Next(items.Count)];

    private sealed record Fault(string Measure, int Row, Side Side, bool IsRoot)
    {
        public override string ToString() => $"{Measure}.{Domain.Terms.Of(Side)}";
    }
}
