using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading.Own;

/// <summary>Takes the names of removed entries out of the lists of others.</summary>
internal sealed class Pruning(IEnumerable<EntryId> removed, FaultList faults)
{
    private static readonly string[] Stages = [.. Domain.Terms.All<Stage>()];

    private readonly HashSet<EntryId> _removed = [.. removed];

    public MapNode Of(EntryKind kind, MapNode entry) => kind switch
    {
        EntryKind.Progression => Without(entry, Stages, text => Is(EntryKind.Drill, text)),
        EntryKind.Drill => Without(entry, ["cautions"], text => Is(EntryKind.Caution, text)),
        EntryKind.Pattern => Without(entry, ["over", "before", "unless"], text => Is(EntryKind.Pattern, text) || IsUnless(text)),
        _ => entry,
    };

    private MapNode Without(MapNode entry, IReadOnlyCollection<string> lists, Predicate<string> gone)
    {
        var kept = new MapNode(entry.At, entry.Path);
        foreach (var part in entry.Entries)
        {
            if (!lists.Contains(part.Name) || part.Value is not ListNode list) kept.Add(part, faults);
            else if (Left(list, gone) is { } left && (left.Items.Count > 0 || list.Items.Count == 0)) kept.Add(part with { Value = left }, faults);
        }

        return kept;
    }

    private static ListNode Left(ListNode list, Predicate<string> gone) =>
        new(list.At, list.Path, [.. list.Items.Where(item => EntryLists.Word(item) is not { } text || !gone(text))]);

    private bool Is(EntryKind kind, string text) => _removed.Contains(new EntryId(kind, text));

    private bool IsUnless(string text) => text.Split(' ', StringSplitOptions.RemoveEmptyEntries) is ["pattern", var id] && Is(EntryKind.Pattern, id);
}
