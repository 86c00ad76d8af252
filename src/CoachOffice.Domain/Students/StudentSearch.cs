using System.Globalization;
using System.Text;

namespace CoachOffice.Domain.Students;

/// <summary>The one form in which names are searched: decomposed, marks dropped, lower case, single spaces. The same on every database.</summary>
public static class StudentSearch
{
    /// <summary>What is stored beside a student.</summary>
    public static string TextOf(params IEnumerable<string> parts) => Fold(string.Join(' ', parts.Where(p => p.Length > 0)));

    /// <summary>Folds what was typed the same way.</summary>
    public static string Fold(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var folded = new StringBuilder(text.Length);
        foreach (var letter in text.Normalize(NormalizationForm.FormD))
        {
            if (CharUnicodeInfo.GetUnicodeCategory(letter) == UnicodeCategory.NonSpacingMark) continue;
            if (char.IsWhiteSpace(letter) && (folded.Length == 0 || folded[^1] == ' ')) continue;
            folded.Append(char.IsWhiteSpace(letter) ? ' ' : char.ToLowerInvariant(letter));
        }

        return folded.ToString().TrimEnd();
    }
}
