using System.Globalization;
using System.Text.Json.Nodes;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Reading.Nodes;
using CoachOffice.Drafting.Reading.Own;

namespace CoachOffice.Drafting.Writing;

/// <summary>Turns an entry's text into a plain tree, so that a form can show what stands there, right or wrong. The other way is <see cref="EntryText.Write"/>.</summary>
public static class TypedEntry
{
    /// <summary>The entry's names and values; null when the text is not one mapping that can be read as YAML.</summary>
    public static JsonObject? Tree(EntryKind kind, string typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        var faults = new FaultList();
        var root = YamlTree.Read("", OwnFile.Of(kind, typed), faults) as MapNode;
        if (faults.Count > 0 || root is null) return null;
        if (kind == EntryKind.Name) return Map(root);
        return root.Find(EntryLists.NameOf(kind)) switch
        {
            MapNode only => Map(only),
            ListNode { Items: [MapNode only] } => Map(only),
            _ => null,
        };
    }

    private static JsonNode? Of(Node node) => node switch
    {
        MapNode map => Map(map),
        ListNode list => new JsonArray([.. list.Items.Select(Of)]),
        ScalarNode { Scalar: ScalarKind.Nothing } => null,
        ScalarNode { Scalar: ScalarKind.Flag } flag => flag.Text == "true",
        ScalarNode { Scalar: ScalarKind.Number } number when double.TryParse(number.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value) => value,
        ScalarNode scalar => scalar.Text.Trim(),
        _ => null,
    };

    private static JsonObject Map(MapNode map) => new(map.Entries.Select(e => KeyValuePair.Create(e.Name, Of(e.Value))));
}
