using System.Text;
using System.Text.Json.Nodes;
using CoachOffice.Domain;
using CoachOffice.Drafting.Reading.Canonical;

namespace CoachOffice.Drafting.Replay;

/// <summary>
/// One definition of a rulebook as one text, so that two books can be compared. What a draft never reads is left out by name;
/// a property added later counts as read until somebody says otherwise.
/// </summary>
internal static class DefinitionText
{
    public static string Of(object definition, params IReadOnlyList<string> without)
    {
        var tree = PlainTree.Of(definition)!.AsObject();
        foreach (var name in without) tree.Remove(name);
        return Text(tree);
    }

    public static string OfAll(IEnumerable<object> definitions, params IReadOnlyList<string> without) =>
        string.Join('\n', definitions.Select(d => Of(d, without)));

    private static string Text(JsonNode tree) => Encoding.UTF8.GetString(CanonicalJson.Write(tree));
}
