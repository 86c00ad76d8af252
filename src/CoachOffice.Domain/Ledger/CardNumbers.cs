using System.Globalization;

namespace CoachOffice.Domain.Ledger;

/// <summary>Keeps card data out: no text of the ledger may hold what looks like the number of a payment card, 12 to 19 digits with a right check digit (Luhn's formula, ISO/IEC 7812-1 annex B).</summary>
public static class CardNumbers
{
    private const int Shortest = 12;
    private const int Longest = 19;

    /// <summary>True when a run of digits, spaces, dots and dashes between them aside, could be a card's.</summary>
    public static bool LooksLikeOne(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var run = new List<int>();
        foreach (var letter in text)
        {
            if (CharUnicodeInfo.GetDecimalDigitValue(letter) is var digit and >= 0) run.Add(digit);
            else if (letter is not ('-' or '.' or '\u2010' or '\u2011' or '\u2013' or '\u2212') && !char.IsWhiteSpace(letter))
            {
                if (AnyWindow(run)) return true;
                run.Clear();
            }
        }

        return AnyWindow(run);
    }

    // A whole run that fits is looked at whole; in a longer one a card's number may hide anywhere.
    private static bool AnyWindow(List<int> run)
    {
        if (run.Count <= Longest) return run.Count >= Shortest && Checks(run, 0, run.Count);
        for (var start = 0; start + Shortest <= run.Count; start++)
            for (var length = Shortest; length <= Math.Min(Longest, run.Count - start); length++)
                if (Checks(run, start, length)) return true;
        return false;
    }

    private static bool Checks(List<int> run, int start, int length)
    {
        var sum = 0;
        for (var fromEnd = 0; fromEnd < length; fromEnd++)
        {
            var digit = run[start + length - 1 - fromEnd];
            if (fromEnd % 2 == 1) digit = digit > 4 ? (digit * 2) - 9 : digit * 2;
            sum += digit;
        }

        return sum % 10 == 0;
    }
}
