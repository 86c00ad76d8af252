using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading.Own;

/// <summary>Under which name entries of a kind stand in a file, and which of them an entry as written is.</summary>
internal static class EntryLists
{
    private static readonly Dictionary<string, EntryKind> Kinds = Enum.GetValues<EntryKind>().ToDictionary(NameOf, StringComparer.Ordinal);

    /// <summary>The names of the lists and of the two values a book has once.</summary>
    public static IReadOnlyCollection<string> Names => Kinds.Keys;

    /// <summary>True for what a book has once and what is therefore no list.</summary>
    public static bool IsSingle(EntryKind kind) => kind is EntryKind.Dosage or EntryKind.Name;

    /// <summary>E.g. <c>drills</c>.</summary>
    public static string NameOf(EntryKind kind) => kind is EntryKind.Dosage or EntryKind.Name or EntryKind.TrainAfter ? Terms.Of(kind) : Terms.Of(kind) + "s";

    /// <summary>The kind whose entries stand under a name.</summary>
    public static EntryKind KindOf(string name) => Kinds[name];

    /// <summary>Which entry this is; null when it does not say so in a way that can be read.</summary>
    public static EntryId? IdOf(EntryKind kind, Node node)
    {
        if (node is not MapNode map) return null;
        return kind switch
        {
            EntryKind.Range => Named(kind, map, "measure"),
            EntryKind.Goal => Named(kind, map, "goal"),
            EntryKind.Adjustment => Adjusting(map),
            EntryKind.TrainAfter => (Word(map, "work"), First(map)) is ({ } work, { } first) ? EntryId.Waiting(work, first) : null,
            EntryKind.Case => (Word(map, "pattern"), Word(map, "name")) is ({ } pattern, { } name) ? EntryId.Case(pattern, name) : null,
            _ => Named(kind, map, "id"),
        };
    }

    /// <summary>The text of a value, or null.</summary>
    public static string? Word(Node? node) => node is ScalarNode { Scalar: not ScalarKind.Nothing } scalar && scalar.Text.Trim() is { Length: > 0 } text ? text : null;

    private static string? Word(MapNode map, string name) => Word(map.Find(name));

    private static EntryId? Adjusting(MapNode map)
    {
        var (age, levels) = (Word(map, "from-age"), map.Find("levels") is ListNode list ? list.Items.Select(Word).OfType<string>().ToList() : []);
        return Word(map, "measure") is { } measure && (age is not null || levels.Count > 0) ? EntryId.Adjusting(measure, age, levels) : null;
    }

    private static string? First(MapNode map) => map.Find("after") is ListNode { Items: [var first, ..] } ? Word(first) : null;

    private static EntryId? Named(EntryKind kind, MapNode map, string name) => Word(map, name) is { } key ? new EntryId(kind, key) : null;
}
