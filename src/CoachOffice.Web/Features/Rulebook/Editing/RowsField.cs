using System.Text.Json.Nodes;

namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>A list of texts or of things of the book, in order.</summary>
internal sealed class RowsField(string name, string label) : SheetField(name, label)
{
    /// <summary>Written also when it is empty.</summary>
    public bool Always { get; init; }

    /// <summary>Rows of several lines.</summary>
    public bool IsLong { get; init; }

    /// <summary>The order of rows matters, so they can be moved.</summary>
    public bool IsOrdered { get; init; }

    public override IReadOnlyList<string> RowNames => [Name];

    public override void Fill(JsonObject entry, EntryForm form, PickWords words) => form.Put(Name, entry.Find(Name).Items().Select(item => Shown(words, item.Text())));

    public override void Write(EntryForm form, JsonObject entry, PickWords words) =>
        entry.Set(Name, EntryNodes.List(form.Many(Name).Select(text => EntryNodes.Written(Id(words, text))).Where(text => text is not null), Always));

    public override IReadOnlyList<string> Said(EntryForm form) => [.. form.Many(Name).Select(text => text.Trim()).Where(text => text.Length > 0)];

    public override IEnumerable<string> Differences(EntryForm old, EntryForm now) => FieldWords.Listed(Label, Said(old), Said(now), IsOrdered);
}
