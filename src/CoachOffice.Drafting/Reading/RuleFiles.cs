using System.Text;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading;

/// <summary>All rule files as positioned trees. Entries of one kind may be spread over any files.</summary>
internal sealed class RuleFiles
{
    private static readonly string[] Kinds =
    [
        "name", "measures", "ranges", "adjustments", "patterns", "train-after", "goals", "dosage", "drills", "progressions", "cautions", "cases",
    ];

    private readonly List<MapNode> _roots = [];
    private readonly FaultList _faults;

    public RuleFiles(RulebookText text, FaultList faults)
    {
        _faults = faults;
        foreach (var (file, content) in text.Files) Add(file, content);
    }

    /// <summary>False when a file could not be read at all, so that an id not found may merely stand there.</summary>
    public bool Complete { get; private set; } = true;

    /// <summary>Where to report that something is missing altogether.</summary>
    public Position Start { get; private set; } = new("rulebook.yaml", 1, 1);

    /// <summary>All entries of a kind, in the order of files and lines.</summary>
    public IReadOnlyList<Node> Entries(string kind)
    {
        var found = new List<Node>();
        foreach (var root in _roots)
        {
            if (root.Find(kind) is not { } node) continue;
            if (node is ListNode list) found.AddRange(list.Items);
            else _faults.Add(node, $"a list of {kind} is expected, not {node.Kind}");
        }

        return found;
    }

    /// <summary>The one value of a kind that a rulebook has once; faults when it is missing or there twice.</summary>
    public Node? TheOnly(string kind)
    {
        var found = _roots.Select(root => root.Find(kind)).OfType<Node>().ToList();
        if (found.Count == 0 && Complete) _faults.Add(Start, Fault.WholeFile, $"no file of the rulebook has '{kind}'; one must");
        foreach (var second in found.Skip(1)) _faults.Add(second, $"'{kind}' stands in {found[0].At.File}:{found[0].At.Line} already; a rulebook has it once");
        return found.FirstOrDefault();
    }

    private void Add(string file, string content)
    {
        if (Tree(file, content) is not { } root)
        {
            Complete = false;
            return;
        }

        if (_roots.Count == 0 || root.Find("name") is not null) Start = new Position(file, 1, 1);
        _roots.Add(root);
        foreach (var entry in root.Entries.Where(e => !Kinds.Contains(e.Name)))
            _faults.Add(entry.At, entry.Value.Path, $"{Words.Quote(entry.Name)} is no part of a rulebook{Words.Right(entry.Name, Kinds)}");
    }

    private MapNode? Tree(string file, string content)
    {
        if (!Words.IsWhole(content)) _faults.Add(new Position(file, 1, 1), Fault.WholeFile, "the file holds half a character (a lone surrogate); save it as UTF-8");
        else if (content.Length > FileText.MostBytes) FileText.TooBig(file, Encoding.UTF8.GetByteCount(content), _faults);
        else if (YamlTree.Read(file, content, _faults) is { } node)
        {
            if (node is MapNode map) return map;
            _faults.Add(node, $"a mapping with measures, patterns, drills ... is expected, not {node.Kind}");
        }

        return null;
    }
}
