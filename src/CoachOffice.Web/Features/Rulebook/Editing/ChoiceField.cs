using System.Text.Json.Nodes;
using CoachOffice.Web.Shell;

namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>One word of a closed list, or some of them.</summary>
internal sealed class ChoiceField(string name, string label, IReadOnlyList<string> choices) : SheetField(name, label)
{
    public IReadOnlyList<string> Choices { get; } = choices;

    /// <summary>Any number of them.</summary>
    public bool Several { get; init; }

    /// <summary>True or false instead of a text.</summary>
    public bool IsFlag { get; init; }

    /// <summary>How a word is said.</summary>
    public Func<string, string> Say { get; init; } = PlainWords.Of;

    public override void Fill(JsonObject entry, EntryForm form, PickWords words) => form.Put(Name, entry.Find(Name).Items().Select(item => item.Text()));

    public override void Write(EntryForm form, JsonObject entry, PickWords words)
    {
        if (Several) entry.Set(Name, EntryNodes.List(form.Many(Name).Select(EntryNodes.Written)));
        else if (IsFlag && bool.TryParse(form.One(Name), out var flag)) entry.Set(Name, flag);
        else entry.Set(Name, EntryNodes.Written(form.One(Name)));
    }

    public override IReadOnlyList<string> Said(EntryForm form) => [.. form.Many(Name).Where(Choices.Contains).Select(Say)];

    public override IEnumerable<string> Differences(EntryForm old, EntryForm now) => Several ? FieldWords.Listed(Label, Said(old), Said(now), places: false) : base.Differences(old, now);
}
