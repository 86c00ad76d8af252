using System.Text.Json.Nodes;

namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>One thing an entry's form asks for: how it is filled from the entry and written back.</summary>
internal abstract class SheetField(string name, string label)
{
    /// <summary>Name in the entry; a dotted one lies inside a mapping.</summary>
    public string Name { get; } = name;

    public string Label { get; } = label;

    public string? Hint { get; init; }

    /// <summary>May be left empty.</summary>
    public bool Optional { get; init; }

    /// <summary>What an entry is known by; it cannot be changed later.</summary>
    public bool IsIdentity { get; init; }

    /// <summary>What of the book can be named in it.</summary>
    public PickKind? Pick { get; init; }

    /// <summary>Form names of one row, where it is a list.</summary>
    public virtual IReadOnlyList<string> RowNames => [];

    /// <summary>Names in the entry that it writes, for faults to find it.</summary>
    public virtual IEnumerable<string> Names => [Name];

    public abstract void Fill(JsonObject entry, EntryForm form, PickWords words);

    public abstract void Write(EntryForm form, JsonObject entry, PickWords words);

    /// <summary>What the form holds of it, a line for each thing, as a person says it; empty for nothing.</summary>
    public virtual IReadOnlyList<string> Said(EntryForm form) => form.One(Name) is { Length: > 0 } text ? [text] : [];

    /// <summary>What differs between two forms, a sentence each.</summary>
    public virtual IEnumerable<string> Differences(EntryForm old, EntryForm now) => FieldWords.Other(Label, Said(old), Said(now));

    protected string Id(PickWords words, string typed) => Pick is { } kind ? words.Id(kind, typed) : typed.Trim();

    protected string Shown(PickWords words, string id) => Pick is { } kind ? words.Words(kind, id) : id;
}
