using System.Globalization;
using System.Text;

namespace CoachOffice.Domain;

/// <summary>Texts that stand in one line: names, numbers to call. They go into lists, letters and the heads of mails.</summary>
public static class OneLine
{
    /// <summary>What would be right, for a refusal.</summary>
    public const string Wanted = "Write this in one line, without line breaks and without marks that turn the direction of the text around; type it instead of pasting it.";

    // Marks that reverse what stands after them, U+202A to U+202E and U+2066 to U+2069. Letters that run right to left need none of them.
    private static bool Turns(Rune rune) => rune.Value is (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069);

    /// <summary>True when nothing in it breaks the line, controls a device or turns the direction of what follows.</summary>
    public static bool Fits(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.EnumerateRunes().All(rune => !Turns(rune)
            && Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator));
    }

    /// <summary>True when at least one character of it can be seen.</summary>
    public static bool Shows(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.EnumerateRunes().Any(rune => !Rune.IsWhiteSpace(rune) && Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Control or UnicodeCategory.Format));
    }
}
