using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading;

/// <summary>All ids declared anywhere, collected before anything is read, so that a faulty entry is still known by its id.</summary>
internal sealed class KnownIds
{
    private readonly FaultList _faults;
    private readonly RuleFiles _files;
    private readonly IReadOnlyDictionary<string, Node> _measures;
    private readonly IReadOnlyDictionary<string, Node> _patterns;
    private readonly IReadOnlyDictionary<string, Node> _drills;
    private readonly IReadOnlyDictionary<string, Node> _cautions;

    public KnownIds(RuleFiles files, FaultList faults)
    {
        _faults = faults;
        _files = files;
        _measures = Declared(files.Entries("measures"));
        _patterns = Declared(files.Entries("patterns"));
        _drills = Declared(files.Entries("drills"));
        _cautions = Declared(files.Entries("cautions"));
        Declared(files.Entries("progressions"));
    }

    public MeasureId Measure(Node node, FaultList faults) => MeasureId.From(Known(node, "measure", _measures));

    public PatternId Pattern(Node node, FaultList faults) => PatternId.From(Known(node, "pattern", _patterns));

    public DrillId Drill(Node node, FaultList faults) => DrillId.From(Known(node, "drill", _drills));

    public CautionId Caution(Node node, FaultList faults) => CautionId.From(Known(node, "caution", _cautions));

    /// <summary>A measure named inside a longer text.</summary>
    public MeasureId MeasureIn(ScalarNode text, string id, int letter) => MeasureId.From(Checked(text.Letter(letter), text.Path, id, "measure", _measures));

    /// <summary>A pattern named inside a longer text.</summary>
    public PatternId PatternIn(ScalarNode text, string id, int letter) => PatternId.From(Checked(text.Letter(letter), text.Path, id, "pattern", _patterns));

    private string Known(Node node, string kind, IReadOnlyDictionary<string, Node> known)
    {
        var before = _faults.Count;
        var id = Single.Text(node, _faults);
        return _faults.Count > before ? id : Checked(node.At, node.Path, id, kind, known);
    }

    private string Checked(Position at, string path, string id, string kind, IReadOnlyDictionary<string, Node> known)
    {
        if (known.ContainsKey(id) || !_files.Complete) return id.Length == 0 ? "?" : id;
        _faults.Add(at, path, $"there is no {kind} {Words.Quote(id)}{Hint(id, kind, known.Keys)}");
        return "?";
    }

    private string Hint(string id, string kind, IEnumerable<string> known)
    {
        if (_files.IsRemoved(new EntryId(Terms.Parse<EntryKind>(kind), id))) return " any more: your own rules remove it";
        return Words.Nearest(id, known) is { } nearest ? $"; nearest: {nearest}" : "";
    }

    private Dictionary<string, Node> Declared(IReadOnlyList<Node> entries)
    {
        var known = new Dictionary<string, Node>(StringComparer.Ordinal);
        foreach (var id in entries.OfType<MapNode>().Select(map => map.Find("id")).OfType<ScalarNode>())
        {
            if (known.TryAdd(id.Text, id)) continue;
            var first = known[id.Text].At;
            _faults.Add(id, $"the id {Words.Quote(id.Text)} is taken in {first.File}:{first.Line}; give this one another");
        }

        return known;
    }
}
