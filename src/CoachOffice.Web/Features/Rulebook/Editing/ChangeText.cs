using System.Text.Json.Nodes;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Writing;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>What becomes of an entry, in a coach's words: "Driver (°): wanted 20 to 28, now 22 to 26".</summary>
internal sealed class ChangeText(Domain.Plans.Rulebook book, IReadOnlyList<EntryEdit> waiting)
{
    private readonly PickWords _words = new(book, waiting);

    /// <summary>One sentence for each thing that differs; none when a text cannot be read, so that only its lines can be shown.</summary>
    public IReadOnlyList<string> Of(EntryId id, string? old, string? now)
    {
        var (before, after) = (Tree(id.Kind, old), Tree(id.Kind, now));
        if (before is null || after is null) return [];
        if (now is null) return ["It goes out of the book."];
        var sheet = EntrySheets.Of(id.Kind);
        return [.. sheet is not null && Fits(sheet, before, old) && Fits(sheet, after, now) ? BySheet(sheet, before, after, UnitOf(id)) : ByName(before, after)];
    }

    private IEnumerable<string> BySheet(EntrySheet sheet, JsonObject before, JsonObject after, string unit)
    {
        var (old, now) = (sheet.Fill(before, _words), sheet.Fill(after, _words));
        var fields = sheet.Fields.Where(field => !field.IsIdentity);
        return before.Count == 0
            ? fields.Where(field => field.Name != "name").SelectMany(field => FieldWords.New(Label(field), field.Said(now)))
            : fields.SelectMany(field => field.Differences(old, now).Select(line => field is BandsField ? line.Replace(": ", $"{unit}: ", StringComparison.Ordinal) : line));

        string Label(SheetField field) => field is BandsField ? $"{field.Label}{unit}" : field.Label;
    }

    // Kinds without a form are said by the names of the file.
    private static IEnumerable<string> ByName(JsonObject before, JsonObject after)
    {
        var (old, now) = (Flat(before, "").ToDictionary(), Flat(after, "").ToDictionary());
        return old.Keys.Union(now.Keys).SelectMany(name => FieldWords.Other(name, Listed(old, name), Listed(now, name)));
    }

    private static string[] Listed(Dictionary<string, string> texts, string name) => texts.TryGetValue(name, out var text) && text.Length > 0 ? [text] : [];

    private static IEnumerable<(string Name, string Text)> Flat(JsonNode? node, string name) => node switch
    {
        JsonObject map => map.SelectMany(part => Flat(part.Value, $"{name} {PlainWords.Of(part.Key)}".TrimStart())),
        JsonArray list when list.Any(item => item is JsonObject) => list.SelectMany((item, i) => Flat(item, $"{name} {i + 1}")),
        JsonArray list => [(name, string.Join(", ", list.Select(item => item.Text())))],
        _ => [(name, node.Text())],
    };

    private bool Fits(EntrySheet sheet, JsonObject tree, string? text) => text is null || sheet.Holds(tree, _words);

    private static JsonObject? Tree(EntryKind kind, string? text) => text is null ? [] : TypedEntry.Tree(kind, text);

    // As it is put behind what is measured by it.
    private string UnitOf(EntryId id) =>
        id.Kind == EntryKind.Range && book.Find(MeasureId.From(id.Key)) is { } measure && UnitText.Metric.Symbol(measure.Unit) is { Length: > 0 } symbol ? $" ({symbol})" : "";
}
