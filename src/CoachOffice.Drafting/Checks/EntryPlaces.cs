using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Checks;

/// <summary>Where the entries of a book stand. The files are read for it only once something is wrong.</summary>
internal sealed class EntryPlaces(RulebookText text)
{
    private readonly Lazy<RuleFiles> _files = new(() => new RuleFiles(text, new FaultList()));
    private readonly Dictionary<string, Dictionary<string, Position>> _known = [];

    /// <summary>An entry with its place, if it has one.</summary>
    public AnomalyEntry Of(string kind, string id)
    {
        if (!_known.TryGetValue(kind, out var places)) _known.Add(kind, places = Read(kind));
        return places.TryGetValue(id, out var at) ? new AnomalyEntry(kind, id, at.File, at.Line) : new AnomalyEntry(kind, id);
    }

    private Dictionary<string, Position> Read(string kind)
    {
        var places = new Dictionary<string, Position>(StringComparer.Ordinal);
        foreach (var entry in _files.Value.Entries(kind).OfType<MapNode>())
        {
            if ((entry.Find("id") ?? entry.Find("measure") ?? entry.Find("work")) is ScalarNode name) places.TryAdd(name.Text, entry.At);
        }

        return places;
    }
}
