using System.Text.Json.Nodes;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Web.Shell.Wording;

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

    /// <summary>A line for each club that has a band.</summary>
    public override IReadOnlyList<string> Said(EntryForm form) => [.. Clubs.Select(club => (Club: club, Band: Band(form, club))).Where(c => c.Band is not null).Select(c => $"{c.Club} {c.Band}")];

    public override IEnumerable<string> Differences(EntryForm old, EntryForm now) =>
        from club in Clubs
        let parts = Part("wanted", Wanted(old, club), Wanted(now, club)).Concat(Part("aim", Aim(old, club), Aim(now, club))).ToList()
        where parts.Count > 0
        select $"{MeasureWords.Sentence(club)}: {string.Join("; ", parts)}";

    private static IEnumerable<string> Part(string what, string? old, string? now) =>
        old == now ? [] : [old is null ? $"{what} now {now}, nothing before" : $"{what} {old}, now {now ?? "nothing"}"];

    // E.g. "20 to 28, aim 20 to 25"; null for none.
    private static string? Band(EntryForm form, string club) => Aim(form, club) is { } aim ? $"{Wanted(form, club)}, aim {aim}" : Wanted(form, club);

    private static string? Wanted(EntryForm form, string club) => form.One($"{club}.goal") == "true" ? "the student's own goal" : Said(form.One($"{club}.low"), form.One($"{club}.high"));

    private static string? Aim(EntryForm form, string club) => form.One($"{club}.goal") == "true" ? null : Said(form.One($"{club}.aim-low"), form.One($"{club}.aim-high"));

    private static string? Said(string low, string high) => (low, high) switch
    {
        ("", "") => null,
        (_, "") => $"{low} or more",
        ("", _) => $"{high} or less",
        _ => $"{low} to {high}",
    };

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
