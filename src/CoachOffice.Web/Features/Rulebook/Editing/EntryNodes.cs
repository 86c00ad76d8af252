using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using CoachOffice.UseCases.Lessons;

namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>Values of an entry to and from the texts of a form.</summary>
internal static class EntryNodes
{
    /// <summary>A single value as a person reads it.</summary>
    public static string Text(this JsonNode? node) => node?.GetValueKind() switch
    {
        null or JsonValueKind.Null => "",
        JsonValueKind.String => node.GetValue<string>(),
        JsonValueKind.Number => node.GetValue<double>().ToString(CultureInfo.InvariantCulture),
        _ => node.ToJsonString(),
    };

    /// <summary>Items of a list; a single value counts as one.</summary>
    public static IEnumerable<JsonNode?> Items(this JsonNode? node) => node is JsonArray list ? list : node is null ? Enumerable.Empty<JsonNode?>() : Enumerable.Repeat<JsonNode?>(node, 1);

    /// <summary>A number as typed, with a point or a comma; anything else stays the text it is, and the reader says so.</summary>
    public static JsonNode? Number(string text) =>
        text.Trim().Length == 0 ? null : NumberEntry.One(text).TryGet(out var number) ? JsonValue.Create(number) : JsonValue.Create(text.Trim());

    /// <summary>A text; nothing when it is empty.</summary>
    public static JsonNode? Written(string text) => text.Trim() is { Length: > 0 } some ? JsonValue.Create(some.ReplaceLineEndings("\n")) : null;

    /// <summary>A list; nothing when it is empty and need not be there.</summary>
    public static JsonNode? List(IEnumerable<JsonNode?> items, bool always = false) => new JsonArray([.. items]) is { } list && (list.Count > 0 || always) ? list : null;

    /// <summary>Sets a value under a name; a dotted name lies inside a mapping.</summary>
    public static void Set(this JsonObject tree, string name, JsonNode? value)
    {
        if (value is null) return;
        if (name.Split('.') is not [var outer, var inner]) tree[name] = value;
        else if (tree[outer] is JsonObject map) map[inner] = value;
        else tree[outer] = new JsonObject { [inner] = value };
    }

    /// <summary>The value under a name, dotted or not.</summary>
    public static JsonNode? Find(this JsonObject tree, string name) =>
        name.Split('.') is [var outer, var inner] ? (tree[outer] as JsonObject)?[inner] : tree[name];
}
