using System.Text.Json.Nodes;

namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>Readings of a worked case: which measure, how much, from how many swings.</summary>
internal sealed class ReadingsField(string name, string label) : SheetField(name, label)
{
    public string What => $"{Name}.what";

    public string Value => $"{Name}.value";

    public string Swings => $"{Name}.swings";

    public override IReadOnlyList<string> RowNames => [What, Value, Swings];

    public override void Fill(JsonObject entry, EntryForm form, PickWords words)
    {
        foreach (var (measure, reading) in entry[Name] as JsonObject ?? [])
        {
            form.Add(What, words.Words(PickKind.Measure, measure));
            form.Add(Value, (reading is JsonObject several ? several["value"] : reading).Text());
            form.Add(Swings, (reading as JsonObject)?["readings"].Text() ?? "");
        }
    }

    public override void Write(EntryForm form, JsonObject entry, PickWords words)
    {
        var readings = new JsonObject();
        var (what, value, swings) = (form.Many(What), form.Many(Value), form.Many(Swings));
        for (var i = 0; i < Math.Min(what.Count, Math.Min(value.Count, swings.Count)); i++)
        {
            if (what[i].Trim().Length == 0) continue;
            var number = EntryNodes.Number(value[i]);
            readings[words.Id(PickKind.Measure, what[i])] = EntryNodes.Number(swings[i]) is { } count ? new JsonObject { ["value"] = number, ["readings"] = count } : number;
        }

        entry[Name] = readings;
    }

    public override IReadOnlyList<string> Said(EntryForm form) => [.. Read(form).Select(r => $"{r.What} {r.Value}")];

    /// <summary>A reading that is another now is said as one thing, not as one that goes and one that comes.</summary>
    public override IEnumerable<string> Differences(EntryForm old, EntryForm now)
    {
        var (before, after) = (Read(old).ToLookup(r => r.What, r => r.Value, StringComparer.Ordinal), Read(now).ToLookup(r => r.What, r => r.Value, StringComparer.Ordinal));
        var both = after.Select(r => r.Key).Where(before.Contains).ToList();
        return both.Where(what => !before[what].SequenceEqual(after[what], StringComparer.Ordinal)).SelectMany(what => FieldWords.Other(what, [.. before[what]], [.. after[what]]))
            .Concat(FieldWords.Listed(Label, Only(before, both), Only(after, both), places: false));
    }

    private IEnumerable<(string What, string Value)> Read(EntryForm form)
    {
        var (value, swings) = (form.Many(Value), form.Many(Swings));
        return form.Many(What).Select((what, i) => (what, $"{value[i]}{(swings[i].Length > 0 ? $" from {swings[i]} swings" : "")}"));
    }

    private static List<string> Only(ILookup<string, string> readings, List<string> both) =>
        [.. readings.Where(r => !both.Contains(r.Key)).SelectMany(r => r, (r, value) => $"{r.Key} {value}")];
}
