using CoachOffice.Domain.Measuring;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading.Entries;

/// <summary>Reads <c>measures</c>: what a coach reads from a swing, its unit, limits and error.</summary>
internal sealed class MeasureEntries(Shelf shelf)
{
    private readonly Dictionary<int, Node> _orders = [];
    private readonly Dictionary<MeasureId, (int Order, Node? Derived)> _places = [];

    /// <summary>All sound measures in the order of the table.</summary>
    public IReadOnlyList<Measure> Read()
    {
        var found = shelf.ReadAll("measures", One).OrderBy(m => _places[m.Id].Order).Select((measure, row) => measure with { Row = row }).ToList();
        var byId = found.DistinctBy(m => m.Id).ToDictionary(m => m.Id);
        foreach (var measure in found) CheckDerivation(measure, byId);
        shelf.Measures = byId;
        shelf.Orders = byId.Keys.ToDictionary(id => id, id => _places[id].Order);
        return found;
    }

    private Measure One(Entry entry)
    {
        var measure = new Measure
        {
            Id = MeasureId.From(entry.Require("id") is { } id ? Single.NewId(id, shelf.Faults) : "?"),
            Name = entry.Text("name"),
            Row = 0,
            Unit = entry.Require("unit") is { } unit ? Single.UnitOf(unit, shelf.Faults) : Unit.Ratio,
            View = entry.Word<View>("view"),
            Moment = entry.Word<Moment>("moment"),
            Positive = entry.Text("positive"),
            Negative = entry.TextIf("negative"),
            HowTo = entry.Text("how"),
            Plausible = entry.Require("plausible") is { } pair ? Single.Pair(pair, shelf.Faults) : new Limits(null, null),
            Doubtful = entry.Find("doubtful") is { } doubtful ? Single.Pair(doubtful, shelf.Faults) : null,
            SetupError = 0,
            SwingError = 0,
            Step = Above(entry, "step", 0),
            Instruments = Instruments(entry),
            NoFaultSides = entry.Distinct(entry.ItemsIf("no-fault"), FaultSyntax.SideOf),
            StyleOnly = entry.Flag("style-only"),
            Outcome = entry.Flag("outcome"),
            ScalesWithStature = entry.Flag("scales-with-stature"),
            NeedsFastVideo = entry.Flag("needs-fast-video"),
            Derived = Derivation(entry),
        };
        _places[measure.Id] = (Order(entry), entry.Find("derived"));
        if (entry.Sound) CheckSense(entry, measure);
        return WithError(measure, entry);
    }

    private int Order(Entry entry)
    {
        var before = shelf.Faults.Count;
        var order = entry.Whole("order", 0, 100_000);
        if (shelf.Faults.Count == before && entry.Find("order") is { } node && !_orders.TryAdd(order, node))
            shelf.Faults.Add(node, $"the order {order} is taken in {_orders[order].At.File}:{_orders[order].At.Line}; orders are unique");
        return order;
    }

    private IReadOnlyList<Instrument> Instruments(Entry entry)
    {
        var listed = entry.Words<Instrument>("instruments");
        if (listed.Contains(Instrument.Eye)) shelf.Faults.Add(entry.Find("instruments")!, "'eye' can take every measure and is never listed; leave it out");
        return listed;
    }

    private Measure WithError(Measure measure, Entry entry)
    {
        if (entry.Require("error") is not { } node || Entry.Of(node, shelf.Faults) is not { } error) return measure;
        var (setup, swing) = (Above(error, "setup", -1), Above(error, "swing", 0));
        error.Require("setup");
        error.Require("swing");
        error.Close();
        return measure with { SetupError = setup ?? 0, SwingError = swing ?? 0 };
    }

    private double? Above(Entry entry, string name, double bound)
    {
        var before = shelf.Faults.Count;
        if (entry.NumberIf(name) is not { } number || shelf.Faults.Count > before) return null;
        if (bound < 0 ? number < 0 : number <= bound) shelf.Faults.Add(entry.Find(name)!, bound < 0 ? $"{name} is not below 0" : $"{name} is above 0");
        return shelf.Faults.Count > before ? null : number;
    }

    private Derivation? Derivation(Entry entry)
    {
        if (entry.Find("derived") is not { } node || Entry.Of(node, shelf.Faults) is not { } derived) return null;
        var kinds = new[] { DerivationKind.Sum, DerivationKind.Ratio }.Where(kind => derived.Find(Domain.Terms.Of(kind)) is not null).ToList();
        derived.Close();
        if (kinds.Count != 1)
        {
            shelf.Faults.Add(node, "write one of { sum: [..] } and { ratio: [.., ..] }");
            return null;
        }

        var parts = derived.Distinct(derived.SomeItems(Domain.Terms.Of(kinds[0])), shelf.Ids.Measure);
        if (derived.Sound && (parts.Count < 2 || (kinds[0] == DerivationKind.Ratio && parts.Count > 2))) shelf.Faults.Add(node, "a sum has two or more parts, a ratio has two");
        return new Derivation(kinds[0], parts);
    }

    private void CheckSense(Entry entry, Measure measure)
    {
        if (measure.ScalesWithStature && measure.Unit.Dimension != Dimension.Length)
            shelf.Faults.Add(entry.Find("scales-with-stature")!, $"only lengths grow with stature, and {measure.Unit} is none");
        if (measure.Doubtful is { } doubtful && !Bounds.Inside(doubtful, measure.Plausible))
            shelf.Faults.Add(entry.Find("doubtful")!, $"this lies beyond the plausible {Single.Show(measure.Plausible)}");
    }

    private void CheckDerivation(Measure measure, Dictionary<MeasureId, Measure> byId)
    {
        if (measure.Derived is not { } derived || _places[measure.Id].Derived is not { } node) return;
        foreach (var part in derived.Parts.Where(byId.ContainsKey).Select(id => byId[id]))
        {
            if (part.Derived is not null) shelf.Faults.Add(node, $"{part.Id.Value} is derived itself; build on measures that are read");
            if (derived.Kind == DerivationKind.Sum && part.Unit != measure.Unit) shelf.Faults.Add(node, $"{part.Id.Value} is in {part.Unit}, the sum in {measure.Unit}; use one unit");
        }
    }
}
