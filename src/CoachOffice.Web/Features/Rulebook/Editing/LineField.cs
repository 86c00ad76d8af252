using System.Text.Json.Nodes;

namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>A text or a number.</summary>
internal sealed class LineField(string name, string label) : SheetField(name, label)
{
    public bool IsNumber { get; init; }

    /// <summary>Takes several lines.</summary>
    public bool IsLong { get; init; }

    public override void Fill(JsonObject entry, EntryForm form, PickWords words) => form.Put(Name, Shown(words, entry.Find(Name).Text()));

    public override void Write(EntryForm form, JsonObject entry, PickWords words) =>
        entry.Set(Name, IsNumber ? EntryNodes.Number(form.One(Name)) : EntryNodes.Written(Id(words, form.One(Name))));
}
