using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading.Own;

/// <summary>Reads <c>removed</c> and <c>replaced</c> of a practice's own files: which shipped entries a change speaks of, and what they were then.</summary>
internal sealed class OwnList(FaultList faults)
{
    private static readonly EntryKind[] Listed = [.. Enum.GetValues<EntryKind>().Where(kind => !EntryLists.IsSingle(kind))];

    /// <summary>The entries named under one of the two, each with its place.</summary>
    public Dictionary<EntryId, OwnLine> Read(IEnumerable<MapNode> roots, string name)
    {
        var found = new Dictionary<EntryId, OwnLine>();
        foreach (var node in roots.Select(root => root.Find(name)).OfType<Node>())
        {
            if (node is not ListNode list)
            {
                faults.Add(node, $"a list of what is {name} is expected, not {node.Kind}");
                continue;
            }

            foreach (var line in list.Items.Select(One).OfType<OwnLine>().Where(line => !found.TryAdd(line.Id, line)))
                faults.Add(line.Place, $"{line.Id} stands here already; leave it out");
        }

        return found;
    }

    private OwnLine? One(Node node)
    {
        if (Entry.Of(node, faults) is not { } entry) return null;
        var was = entry.TextIf("was");
        var named = Listed.Where(kind => entry.Find(Terms.Of(kind)) is not null).ToList();
        entry.Close();
        if (!entry.Sound) return null;
        if (named is [var kind]) return new OwnLine(new EntryId(kind, Single.Text(entry.Find(Terms.Of(kind))!, faults)), was, node);
        faults.Add(node, "name one entry by its kind and id, e.g. { drill: head-against-shade }");
        return null;
    }
}
