using System.Text.Json.Nodes;
using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Reading.Own;

namespace CoachOffice.Drafting.Writing;

/// <summary>A practice's own changes as files: one that is kept, or one for each entry, so that a fault's file names the entry.</summary>
public static class OwnFiles
{
    /// <summary>The one file in which own changes are kept.</summary>
    public const string Kept = RulebookText.OwnFolder + "changes.yaml";

    private const string Lists = RulebookText.OwnFolder + "removed.yaml";

    /// <summary>The file of one entry.</summary>
    public static string PathOf(EntryId id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return $"{RulebookText.OwnFolder}{EntryLists.NameOf(id.Kind)}/{id.Key.Replace(": ", "/", StringComparison.Ordinal)}.yaml";
    }

    /// <summary>The own changes of a book, a file for each entry.</summary>
    /// <param name="loaded">The book with its own changes.</param>
    /// <param name="except">Entries to leave out, written or removed, as if they had never been touched.</param>
    /// <param name="removed">Shipped entries to remove besides.</param>
    public static IReadOnlyList<KeyValuePair<string, string>> Of(LoadedRulebook loaded, IReadOnlyCollection<EntryId> except, IEnumerable<EntryId> removed)
    {
        ArgumentNullException.ThrowIfNull(loaded);
        var entries = BookEntries.Of(loaded);
        var written = loaded.Own.Written.Where(e => !except.Contains(e.Id)).ToList();
        var gone = loaded.Own.Removed.Where(e => !except.Contains(e.Id)).Concat(removed.Select(id => new OwnEntry(id, null))).ToList();
        var lists = Marks(written, gone);
        var files = written.Select(e => KeyValuePair.Create(PathOf(e.Id), OwnFile.Of(e.Id.Kind, entries[e.Id])));
        return lists.Count == 0 ? [.. files] : [.. files, KeyValuePair.Create(Lists, YamlText.Of(lists, 3))];
    }

    /// <summary>The own changes of a book as the one file that is kept; empty when there are none.</summary>
    public static string AsOne(LoadedRulebook loaded)
    {
        ArgumentNullException.ThrowIfNull(loaded);
        if (loaded.Own.AreNone) return "";
        var trees = BookEntries.Trees(loaded).ToDictionary(e => e.Key, e => e.Value);
        var file = new EntryTree();
        foreach (var single in loaded.Own.Written.Where(e => EntryLists.IsSingle(e.Id.Kind))) file.Node(EntryLists.NameOf(single.Id.Kind), trees[single.Id]);
        foreach (var kind in loaded.Own.Written.Where(e => !EntryLists.IsSingle(e.Id.Kind)).GroupBy(e => e.Id.Kind))
            file.Nodes(EntryLists.NameOf(kind.Key), kind.Select(e => trees[e.Id]));
        foreach (var (name, list) in Marks(loaded.Own.Written, loaded.Own.Removed)) file.Node(name, list!.DeepClone());
        return YamlText.Of(file.Tree, 3);
    }

    private static JsonObject Marks(IReadOnlyList<OwnEntry> written, IReadOnlyList<OwnEntry> removed) => new EntryTree()
        .Nodes("removed", removed.Select(Line))
        .Nodes("replaced", written.Where(e => e.Was is not null && !EntryLists.IsSingle(e.Id.Kind)).Select(Line)).Tree;

    private static JsonObject Line(OwnEntry entry) => new EntryTree().Text(Terms.Of(entry.Id.Kind), entry.Id.Key).Text("was", entry.Was).Tree;
}
