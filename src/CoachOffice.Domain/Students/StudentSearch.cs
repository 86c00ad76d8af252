using System.Globalization;
using System.Text;

namespace CoachOffice.Domain.Students;

/// <summary>The one form in which names are searched: decomposed, marks dropped, lower case, letters that no mark makes spelled out as in a passport, single spaces. The same on every database.</summary>
public static class StudentSearch
{
    /// <summary>What is stored beside a student.</summary>
    public static string TextOf(params IEnumerable<string> parts) => Fold(string.Join(' ', parts.Where(p => p.Length > 0)));

    /// <summary>The same text with every half of a surrogate pair that stands alone replaced; such text can neither be folded nor stored.</summary>
    public static string Whole(string text) => Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(text));

    /// <summary>Folds what was typed the same way; anything can be typed.</summary>
    public static string Fold(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var folded = new StringBuilder(text.Length);
        foreach (var letter in Whole(text).Normalize(NormalizationForm.FormD))
        {
            if (CharUnicodeInfo.GetUnicodeCategory(letter) == UnicodeCategory.NonSpacingMark) continue;
            var space = char.IsWhiteSpace(letter) || char.IsControl(letter);
            if (space && (folded.Length == 0 || folded[^1] == ' ')) continue;
            if (space) folded.Append(' ');
            else Add(folded, char.ToLowerInvariant(letter));
        }

        return folded.ToString().TrimEnd();
    }

    /// <summary>Letters that Unicode does not take apart, as who has no such key would type them (from memory: the usual spelling in plain letters).</summary>
    private static StringBuilder Add(StringBuilder folded, char letter) => letter switch
    {
        'ø' => folded.Append('o'),
        'ł' => folded.Append('l'),
        'đ' or 'ð' => folded.Append('d'),
        'ħ' => folded.Append('h'),
        'ŧ' => folded.Append('t'),
        'ı' => folded.Append('i'),
        'ŋ' => folded.Append('n'),
        'ß' or 'ẞ' => folded.Append("ss"),
        'æ' => folded.Append("ae"),
        'œ' => folded.Append("oe"),
        'þ' => folded.Append("th"),
        _ => folded.Append(letter),
    };
}
