using System.Text.Json.Nodes;

namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>Conditions of a pattern as rows: and, or with the line above, all to the same side.</summary>
internal sealed class ConditionsField(string name, string label) : SheetField(name, label)
{
    private static readonly string[] Parts = ["joins", "what", "is", "strength", "number"];

    /// <summary>Another pattern may be named.</summary>
    public bool Patterns { get; init; }

    public override IReadOnlyList<string> RowNames { get; } = [.. Parts.Select(part => $"{name}.{part}")];

    /// <summary>The rows as typed.</summary>
    public IReadOnlyList<ConditionRow> Rows(EntryForm form)
    {
        var columns = RowNames.Select(form.Many).ToList();
        return [.. Enumerable.Range(0, columns.Min(c => c.Count)).Select(i => new ConditionRow(columns[0][i], columns[1][i], columns[2][i], columns[3][i], columns[4][i]))];
    }

    public override void Fill(JsonObject entry, EntryForm form, PickWords words)
    {
        foreach (var row in entry[Name].Items().SelectMany(item => Flat(item, words)))
        {
            string[] cells = [row.Joins, row.What, row.Is, row.Strength, row.Number];
            foreach (var (column, cell) in RowNames.Zip(cells)) form.Add(column, cell);
        }
    }

    public override void Write(EntryForm form, JsonObject entry, PickWords words)
    {
        var groups = new List<List<ConditionRow>>();
        foreach (var row in Rows(form).Where(row => !row.IsEmpty))
        {
            if (groups.Count == 0 || row.Joins == "and") groups.Add([row]);
            else groups[^1].Add(row);
        }

        entry.Set(Name, EntryNodes.List(groups.Select(group => Grouped(group, words))));
    }

    public override IReadOnlyList<string> Said(EntryForm form)
    {
        var lines = new List<string>();
        foreach (var row in Rows(form).Where(row => !row.IsEmpty))
        {
            if (row.Joins == "and" || lines.Count == 0) lines.Add(row.Said);
            else lines[^1] += $" {(row.Joins == "or" ? "or" : "and also")} {row.Said}";
        }

        return lines;
    }

    public override IEnumerable<string> Differences(EntryForm old, EntryForm now) => FieldWords.Listed(Label, Said(old), Said(now), places: false);

    private static JsonNode Grouped(List<ConditionRow> group, PickWords words)
    {
        var sentences = new JsonArray([.. group.Select(row => (JsonNode?)row.Sentence(words))]);
        if (group.All(row => row.Is == ConditionRow.SameSide)) return new JsonObject { ["same-side"] = sentences };
        return group.Count > 1 ? new JsonObject { ["any"] = sentences } : group[0].Sentence(words);
    }

    private static IEnumerable<ConditionRow> Flat(JsonNode? item, PickWords words) => item switch
    {
        JsonObject { Count: 1 } map when map["any"] is JsonArray any => any.Select((part, i) => ConditionRow.Of(part.Text(), i == 0 ? "and" : "or", words)),
        JsonObject { Count: 1 } map when map["same-side"] is JsonArray same => same.Select((part, i) => new ConditionRow(i == 0 ? "and" : "with", words.Words(PickKind.Measure, part.Text()), ConditionRow.SameSide, "", "")),
        _ => [ConditionRow.Of(item.Text(), "and", words)],
    };
}
