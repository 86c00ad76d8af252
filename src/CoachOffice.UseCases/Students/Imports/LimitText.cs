using System.Text;
using CoachOffice.Domain;
using CoachOffice.Domain.Students;
using NodaTime.Text;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>Limits in one cell: "lower-back current 2026-01-12 student; neck past 2025-03-01 letter". A backslash stands before a semicolon or backslash of the text.</summary>
internal static class LimitText
{
    private const int Words = 4;

    public static string Of(IEnumerable<StudentLimit> limits) =>
        string.Join("; ", limits.Select(l => $"{Terms.Of(l.Region)} {Terms.Of(l.Status)} {LocalDatePattern.Iso.Format(l.NotedOn)} {l.Source.Replace("\\", "\\\\").Replace(";", "\\;")}".TrimEnd()));

    /// <summary>The limits, none for an empty cell; null when it cannot be read.</summary>
    public static IReadOnlyList<StudentLimit>? Read(string cell)
    {
        var limits = Parts(cell).Select(Limit).ToList();
        return limits.Contains(null) ? null : [.. limits.OfType<StudentLimit>()];
    }

    private static StudentLimit? Limit(string part)
    {
        var words = part.Split(' ', Words, StringSplitOptions.RemoveEmptyEntries);
        if (words.Length < Words - 1 || !Terms.TryParse<Region>(words[0], out var region) || !Terms.TryParse<LimitStatus>(words[1], out var status)) return null;
        return LocalDatePattern.Iso.Parse(words[2]) is { Success: true } day ? new StudentLimit { Region = region, Status = status, NotedOn = day.Value, Source = words.Length == Words ? words[^1] : "" } : null;
    }

    private static List<string> Parts(string cell)
    {
        var parts = new List<string>();
        var part = new StringBuilder();
        for (var i = 0; i < cell.Length; i++)
        {
            if (cell[i] == '\\' && i + 1 < cell.Length) part.Append(cell[++i]);
            else if (cell[i] != ';') part.Append(cell[i]);
            else Take(parts, part);
        }

        Take(parts, part);
        return parts;
    }

    private static void Take(List<string> parts, StringBuilder part)
    {
        var text = part.ToString().Trim();
        if (text.Length > 0) parts.Add(text);
        part.Clear();
    }
}
