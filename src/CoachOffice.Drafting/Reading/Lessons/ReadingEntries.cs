using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading.Lessons;

/// <summary>Reads the measured values of a lesson: one for each measure, sorted by measure.</summary>
internal sealed class ReadingEntries(Rulebook book, FaultList faults)
{
    private const int MostReadings = 1000;
    private readonly Dictionary<MeasureId, Node> _seen = [];

    public IReadOnlyList<MeasuredValue> Read(Entry lesson) =>
        [.. lesson.Items("readings").Select(One).OfType<MeasuredValue>().OrderBy(reading => reading.Measure.Value, StringComparer.Ordinal)];

    private MeasuredValue? One(Node item)
    {
        if (Entry.Of(item, faults) is not { } entry) return null;
        var measure = Measure(entry);
        var reading = new MeasuredValue
        {
            Measure = measure?.Id ?? MeasureId.From("?"),
            Value = ValueEntry.Read(entry, measure?.Unit ?? AnyUnit(entry), measure),
            Readings = entry.WholeIf("readings", 1, MostReadings) ?? 1,
            Instrument = entry.WordIf<Instrument>("instrument") ?? Instrument.Video,
            FrameRate = FrameRate(entry),
        };
        entry.Close();
        return entry.Sound ? reading : null;
    }

    private Measure? Measure(Entry entry)
    {
        var before = faults.Count;
        if (entry.Require("measure") is not { } node) return null;
        var id = Single.Text(node, faults);
        if (faults.Count > before) return null;
        if (book.Find(MeasureId.From(id)) is not { } measure)
        {
            var nearest = Words.Nearest(id, book.Measures.Select(m => m.Id.Value));
            faults.Add(node, $"there is no measure {Words.Quote(id)}{(nearest is null ? "" : $"; nearest: {nearest}")}");
            return null;
        }

        if (!_seen.TryAdd(measure.Id, node)) faults.Add(node, $"{id} stands in line {_seen[measure.Id].At.Line} already; write one value, the mean of its readings");
        return measure;
    }

    // Of an unknown measure nothing can be said about the unit, so any unit of the table passes.
    private static Unit AnyUnit(Entry entry) => Unit.Find((entry.Find("unit") as ScalarNode)?.Text) ?? Unit.Ratio;

    private static double? FrameRate(Entry entry)
    {
        var before = entry.Faults.Count;
        if (entry.NumberIf("frameRate") is not { } rate || entry.Faults.Count > before) return null;
        if (rate is <= 0 or > 100_000) entry.Faults.Add(entry.Find("frameRate")!, $"{Single.Show(rate)} frames a second is not possible; write a number above 0, at most 100000");
        return rate;
    }
}
