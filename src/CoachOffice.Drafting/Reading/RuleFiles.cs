using System.Text;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Nodes;
using CoachOffice.Drafting.Reading.Own;

namespace CoachOffice.Drafting.Reading;

/// <summary>All rule files as positioned trees, a practice's own laid over the shipped ones. Entries of one kind may be spread over any files.</summary>
internal sealed class RuleFiles
{
    private static readonly string[] OwnNames = ["removed", "replaced"];

    private readonly List<MapNode> _shipped = [];
    private readonly List<MapNode> _own = [];
    private readonly Dictionary<string, IReadOnlyList<Node>> _entries = new(StringComparer.Ordinal);
    private readonly FaultList _faults;
    private readonly FilesRead? _read;
    private readonly OwnChanges _changes;

    public RuleFiles(RulebookText text, FaultList faults, FilesRead? read = null)
    {
        (_faults, _read) = (faults, read);
        foreach (var (file, content) in text.Files) Add(file, content);
        _changes = new OwnChanges(_shipped, _own, faults);
        if (Complete) _changes.Check();
    }

    /// <summary>False when a file could not be read at all, so that an id not found may merely stand there.</summary>
    public bool Complete { get; private set; } = true;

    /// <summary>Where to report that something is missing altogether.</summary>
    public Position Start { get; private set; } = new("rulebook.yaml", 1, 1);

    /// <summary>What is the practice's own.</summary>
    public OwnRules Own => _changes.Rules();

    /// <summary>All entries of a kind, in the order of files and lines.</summary>
    public IReadOnlyList<Node> Entries(string list)
    {
        if (_entries.TryGetValue(list, out var known)) return known;
        var kind = EntryLists.KindOf(list);
        var entries = Items(_shipped, list).Where(node => !_changes.Hides(kind, node)).Concat(Items(_own, list));
        return _entries[list] = [.. entries.Select(node => _changes.Pruned(kind, node))];
    }

    /// <summary>The one value of a kind that a rulebook has once, a practice's own first; faults when it is missing or there twice.</summary>
    public Node? TheOnly(string kind)
    {
        var found = Values(_own, kind);
        if (found.Count == 0) found = Values(_shipped, kind);
        if (found.Count == 0 && Complete) _faults.Add(Start, Fault.WholeFile, $"no file of the rulebook has '{kind}'; one must");
        foreach (var second in found.Skip(1)) _faults.Add(second, $"'{kind}' stands in {found[0].At.File}:{found[0].At.Line} already; a rulebook has it once");
        return found.FirstOrDefault();
    }

    /// <summary>True when a practice took this entry away.</summary>
    public bool IsRemoved(EntryId id) => _changes.IsRemoved(id);

    private IEnumerable<Node> Items(List<MapNode> roots, string list)
    {
        foreach (var node in Values(roots, list))
        {
            if (node is not ListNode items) _faults.Add(node, $"a list of {list} is expected, not {node.Kind}");
            else foreach (var item in items.Items) yield return item;
        }
    }

    private static List<Node> Values(List<MapNode> roots, string name) => [.. roots.Select(root => root.Find(name)).OfType<Node>()];

    private void Add(string file, string content)
    {
        if (Known(file, content) is not { } root)
        {
            Complete = false;
            return;
        }

        var isOwn = RulebookText.IsOwn(file);
        if (!isOwn && (_shipped.Count == 0 || root.Find("name") is not null)) Start = new Position(file, 1, 1);
        (isOwn ? _own : _shipped).Add(root);
        IReadOnlyCollection<string> names = isOwn ? [.. EntryLists.Names, .. OwnNames] : EntryLists.Names;
        foreach (var entry in root.Entries.Where(e => !names.Contains(e.Name)))
            _faults.Add(entry.At, entry.Value.Path, $"{Words.Quote(entry.Name)} is no part of a rulebook{Words.Right(entry.Name, names)}");
    }

    // Own files change with each edit, and a faulty one has faults to be told again.
    private MapNode? Known(string file, string content)
    {
        if (_read is null || RulebookText.IsOwn(file)) return Tree(file, content);
        if (_read.Find(file, content) is { } known) return known;
        var before = _faults.Count;
        var tree = Tree(file, content);
        if (tree is not null && _faults.Count == before) _read.Keep(file, content, tree);
        return tree;
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
