using System.Globalization;
using System.Text;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Makes texts of people safe to stand in a letter or its head.</summary>
public static class CleanText
{
    private const int MostInLine = 200;

    /// <summary>One line: no line breaks, no control or direction marks, no white space in a row. A name can thus never add a header or a paragraph.</summary>
    public static string Line(string? text)
    {
        var line = new StringBuilder();
        foreach (var rune in (text ?? "").EnumerateRunes())
        {
            var breaks = Rune.IsWhiteSpace(rune) || Rune.GetUnicodeCategory(rune) is UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator;
            if (breaks && line.Length > 0 && line[^1] != ' ') line.Append(' ');
            if (!breaks && Rune.GetUnicodeCategory(rune) != UnicodeCategory.Format) line.Append(rune);
            if (line.Length >= MostInLine) break;
        }

        return line.ToString().Trim();
    }

    /// <summary>Paragraphs of a longer text, each cleaned; empty ones dropped.</summary>
    public static IReadOnlyList<string> Paragraphs(string? text) =>
        [.. (text ?? "").ReplaceLineEndings("\n").Split('\n').SelectMany(Pieces).Where(line => line.Length > 0)];

    // A paragraph longer than a line may be is kept whole, cleaned piece by piece.
    private static IEnumerable<string> Pieces(string paragraph)
    {
        var words = paragraph.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Line).Where(word => word.Length > 0);
        yield return string.Join(' ', words);
    }
}
