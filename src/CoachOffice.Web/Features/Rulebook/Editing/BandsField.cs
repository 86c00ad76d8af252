using System.Text.Json.Nodes;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;

namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>The wanted band of a measure for each club: low, high, perhaps a narrower aim, or the student's own goal.</summary>
internal sealed class BandsField(string name, string label) : SheetField(name, label)
{
    private const string Goal = "goal";

    public static IReadOnlyList<string> Clubs { get; } = Terms.All<Club>();

    public override IEnumerable<string> Names => Clubs;

    public override void Fill(JsonObject entry, EntryForm form, PickWords words)
    {
        foreach (var club in Clubs)
        {
            var written = entry[club];
            if (written is not JsonObject and not JsonArray && written.Text() == Goal) form.Put($"{club}.goal", "true");
            Ends(form, club, "low", "high", written is JsonObject map ? map["range"] : written);
            Ends(form, club, "aim-low", "aim-high", (written as JsonObject)?["aim"]);
        }
    }

    public override void Write(EntryForm form, JsonObject entry, PickWords words)
    {
        foreach (var club in Clubs)
        {
            var (range, aim) = (Pair(form, club, "low", "high"), Pair(form, club, "aim-low", "aim-high"));
            JsonNode? band = form.One($"{club}.goal") == "true" ? Goal : aim is null ? range : new JsonObject { ["range"] = range, ["aim"] = aim };
            entry.Set(club, band);
        }
    }

    private static void Ends(EntryForm form, string club, string low, string high, JsonNode? pair)
    {
        if (pair is not JsonArray { Count: 2 } ends) return;
        form.Put($"{club}.{low}", ends[0].Text());
        form.Put($"{club}.{high}", ends[1].Text());
    }

    private static JsonArray? Pair(EntryForm form, string club, string low, string high)
    {
        var (from, to) = (EntryNodes.Number(form.One($"{club}.{low}")), EntryNodes.Number(form.One($"{club}.{high}")));
        return from is null && to is null ? null : new JsonArray(from, to);
    }
}
