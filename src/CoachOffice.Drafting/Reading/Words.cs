using Quickenshtein;

namespace CoachOffice.Drafting.Reading;

/// <summary>Wording shared by the messages of faults: quoting what was written and naming what is near it.</summary>
internal static class Words
{
    private const int LongestQuote = 60;
    private const int ShortList = 20;

    /// <summary>What was written, on one line and never longer than a message can bear.</summary>
    public static string Quote(string text) => $"'{Clip(text)}'";

    /// <summary>The same without quotes, for paths.</summary>
    public static string Clip(string text)
    {
        var seen = text.Length > LongestQuote ? string.Concat(text.AsSpan(0, LongestQuote), "...") : text;
        return string.Concat(seen.Select(c => char.IsControl(c) || char.IsSurrogate(c) ? '?' : c));
    }

    /// <summary>How to go on: the nearest valid word and, when the list is short, all of it.</summary>
    public static string Right(string written, IEnumerable<string> valid)
    {
        var all = valid.ToList();
        var nearest = Nearest(written, all);
        var near = nearest is null ? "" : $"; nearest: {nearest}";
        return all.Count is > 0 and <= ShortList ? $"{near}; one of: {string.Join(", ", all)}" : near;
    }

    /// <summary>The nearest valid word by edit distance, or null when nothing is near.</summary>
    public static string? Nearest(string written, IEnumerable<string> valid) =>
        written.Length is 0 or > LongestQuote || Closest(written, valid) is not { } best || Distance(written, best) > Math.Max(2, written.Length / 2) ? null : best;

    /// <summary>The nearest valid word by edit distance, however far it is; null when there is none at all.</summary>
    public static string? Closest(string written, IEnumerable<string> valid) =>
        valid.OrderBy(word => Distance(written, word)).ThenBy(word => word, StringComparer.Ordinal).FirstOrDefault();

    private static int Distance(string written, string word) => Levenshtein.GetDistance(Clip(written), word);

    /// <summary>True when every surrogate has its partner, so that the text can be written as UTF-8.</summary>
    public static bool IsWhole(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (!char.IsSurrogate(text[i])) continue;
            if (i + 1 == text.Length || !char.IsSurrogatePair(text[i], text[i + 1])) return false;
            i++;
        }

        return true;
    }
}
