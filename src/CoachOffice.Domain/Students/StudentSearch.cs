using System.Globalization;
using System.Text;

namespace CoachOffice.Domain.Students;

/// <summary>The one form in which names are searched: decomposed, marks dropped, lower case, single spaces. The same on every database.</summary>
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
            folded.Append(space ? ' ' : char.ToLowerInvariant(letter));
        }

        return folded.ToString().TrimEnd();
    }
}
