using System.Globalization;
using System.Text.Json.Nodes;
using CoachOffice.Domain;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading.Own;

/// <summary>A short mark of what an entry says as written, layout and comments aside, by which a later change of the shipped entry is noticed.</summary>
internal static class EntryMark
{
    private const int Letters = 12;

    public static string Of(Node node) => CanonicalJson.Sha256(Plain(node))[..Letters];

    private static JsonNode? Plain(Node node) => node switch
    {
        MapNode map => new JsonObject(map.Entries.Select(e => KeyValuePair.Create(e.Name, Plain(e.Value)))),
        ListNode list => new JsonArray([.. list.Items.Select(Plain)]),
        ScalarNode { Scalar: ScalarKind.Number } number when double.TryParse(number.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value) => value,
        ScalarNode { Scalar: ScalarKind.Nothing } => null,
        ScalarNode scalar => scalar.Text.Trim(),
        _ => null,
    };
}
