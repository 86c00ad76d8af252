using System.Text.Json.Nodes;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Writing;

/// <summary>A plain tree being filled name by name; what is null or empty leaves no name.</summary>
internal sealed class EntryTree
{
    public JsonObject Tree { get; } = [];

    public EntryTree Node(string name, JsonNode? value)
    {
        if (value is not null) Tree.Add(name, value);
        return this;
    }

    public EntryTree Text(string name, string? text) => Node(name, text);

    public EntryTree Number(string name, double? number) => Node(name, number);

    public EntryTree Flag(string name, bool value) => Node(name, value ? true : null);

    public EntryTree Map(string name, EntryTree map) => Node(name, map.Tree);

    public EntryTree List(string name, IEnumerable<string> texts, bool always = false) => Nodes(name, texts.Select(text => (JsonNode?)text), always);

    public EntryTree Words<T>(string name, IEnumerable<T> words)
        where T : struct, Enum => List(name, words.Select(word => Terms.Of(word)));

    public EntryTree Nodes(string name, IEnumerable<JsonNode?> nodes, bool always = false)
    {
        var list = new JsonArray([.. nodes]);
        return Node(name, list.Count > 0 || always ? list : null);
    }

    public EntryTree Source(SourceMark source) => Text("source", source.IsPublished ? source.Text : null);
}
