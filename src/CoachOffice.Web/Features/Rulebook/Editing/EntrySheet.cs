using System.Text.Json.Nodes;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>The form of one kind of entry: its fields in the order of the file.</summary>
internal sealed record EntrySheet(EntryKind Kind, IReadOnlyList<SheetField> Fields)
{
    public EntryForm Fill(JsonObject entry, PickWords words)
    {
        var form = new EntryForm();
        foreach (var field in Fields) field.Fill(entry, form, words);
        return form;
    }

    public JsonObject Write(EntryForm form, PickWords words)
    {
        var entry = new JsonObject();
        foreach (var field in Fields) field.Write(form, entry, words);
        return entry;
    }

    /// <summary>False when the entry says something the form has no field for: then it is to be edited as text.</summary>
    public bool Holds(JsonObject entry, PickWords words) => JsonNode.DeepEquals(Write(Fill(entry, words), words), entry);

    /// <summary>The field a fault's place lies in; null when it concerns the entry as a whole.</summary>
    public SheetField? FieldAt(string path)
    {
        var head = path.Split('[')[0];
        return Fields.FirstOrDefault(f => f.Names.Any(name => head == name || head.StartsWith($"{name}.", StringComparison.Ordinal)));
    }

    /// <summary>The list a row stands in.</summary>
    public SheetField? RowsOf(string name) => Fields.FirstOrDefault(f => f.Name == name && f.RowNames.Count > 0);
}
