using System.Runtime.CompilerServices;
using System.Text.Json.Nodes;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.Drafting.Writing;

/// <summary>A book entry by entry, each as canonical text, so that two books can be compared and one entry shown.</summary>
public static class BookEntries
{
    // Writing all entries takes longer than anything done with them, and a save asks for those of one book several times.
    private static readonly ConditionalWeakTable<LoadedRulebook, IReadOnlyDictionary<EntryId, string>> Known = [];

    /// <summary>Every entry of the book with its text, worked cases included.</summary>
    public static IReadOnlyDictionary<EntryId, string> Of(LoadedRulebook loaded)
    {
        ArgumentNullException.ThrowIfNull(loaded);
        return Known.GetValue(loaded, static book => Trees(book).ToDictionary(e => e.Key, e => Text(e.Value)));
    }

    /// <summary>One entry's text, or null when the book has no such entry.</summary>
    public static string? Find(LoadedRulebook loaded, EntryId id)
    {
        ArgumentNullException.ThrowIfNull(loaded);
        if (Known.TryGetValue(loaded, out var known)) return known.GetValueOrDefault(id);
        return Trees(loaded).Where(e => e.Key == id).Select(e => Text(e.Value)).FirstOrDefault();
    }

    internal static IEnumerable<KeyValuePair<EntryId, JsonNode>> Trees(LoadedRulebook loaded)
    {
        var book = loaded.Book;
        return
        [
            Pair(EntryId.Name, book.Name),
            Pair(EntryId.Dosage, DosageTree.Of(book.Dosage)),
            .. book.Measures.Select(m => Pair(EntryId.Of(m.Id), EntryTrees.Of(m, loaded.Orders[m.Id]))),
            .. book.Ranges.GroupBy(r => r.Measure).Select(g => Pair(EntryId.RangesOf(g.Key), EntryTrees.Of([.. g]))),
            .. book.Adjustments.Select(a => Pair(EntryId.Of(a), EntryTrees.Of(a))),
            .. book.Patterns.Select(p => Pair(EntryId.Of(p.Id), EntryTrees.Of(p))),
            .. book.TrainAfter.Select(t => Pair(EntryId.Of(t), EntryTrees.Of(t))),
            .. book.Goals.Select(g => Pair(EntryId.Of(g), EntryTrees.Of(g))),
            .. book.Drills.Select(d => Pair(EntryId.Of(d.Id), EntryTrees.Of(d))),
            .. book.Progressions.Select(p => Pair(EntryId.Of(p.Id), EntryTrees.Of(p))),
            .. book.Cautions.Select(c => Pair(EntryId.Of(c.Id), EntryTrees.Of(c))),
            .. loaded.Cases.Select(c => Pair(EntryId.Case(c.Pattern.Value, c.Name), EntryTrees.Of(c))),
        ];
    }

    private static string Text(JsonNode tree) => tree is JsonObject map ? EntryText.Write(map) : YamlText.Of(new JsonObject { ["name"] = tree }, 1);

    private static KeyValuePair<EntryId, JsonNode> Pair(EntryId id, JsonNode tree) => KeyValuePair.Create(id, tree);
}
