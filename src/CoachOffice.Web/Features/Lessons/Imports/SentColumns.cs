using System.Globalization;
using CoachOffice.UseCases.Lessons.Imports;

namespace CoachOffice.Web.Features.Lessons.Imports;

/// <summary>From the form of the page to what was said.</summary>
internal static class SentColumns
{
    public static ColumnsForm From(IFormCollection sent, ColumnsView view)
    {
        var club = Index(sent["club-column"]);
        return new ColumnsForm
        {
            Columns = [.. view.Columns.Select(c => new ColumnChoice(c.Index, Text(sent, $"measure[{c.Index}]"), Text(sent, $"unit[{c.Index}]"), Text(sent, $"plus[{c.Index}]"))).Where(c => c.Measure.Length > 0)],
            ClubColumn = club,
            Clubs = Clubs(sent, view, club),
            Club = Text(sent, "club"),
            DayColumn = Index(sent["day-column"]),
            DayOrder = Text(sent, "day-order"),
            Day = Text(sent, "day"),
            Decimals = Text(sent, "decimals"),
        };
    }

    /// <summary>Name of the field of a word; words hold any letters, so it is named by its place.</summary>
    public static string FieldOf(int column, int word) => $"club[{column}][{word}]";

    // The guess stays where the form had no field for the word yet.
    private static Dictionary<string, string> Clubs(IFormCollection sent, ColumnsView view, int? column)
    {
        var clubs = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        if (column is not { } at || at < 0 || at >= view.Words.Count) return clubs;
        foreach (var (i, word) in view.Words[at].Index())
            clubs[word] = sent.ContainsKey(FieldOf(at, i)) ? Text(sent, FieldOf(at, i)) : view.Form.Clubs.GetValueOrDefault(word, "");
        return clubs;
    }

    private static string Text(IFormCollection sent, string name) => sent[name].ToString().Trim();

    private static int? Index(string? text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var index) ? index : null;
}
