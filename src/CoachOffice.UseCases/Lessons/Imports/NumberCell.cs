using System.Globalization;
using CoachOffice.Domain.Lessons.Imports;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>Reads a cell that should hold a number. A formula is no number: nothing is ever computed.</summary>
internal static class NumberCell
{
    private const int Longest = 24;

    /// <summary>True for a cell that says nothing was measured: empty, or dashes.</summary>
    public static bool IsBlank(string cell) => cell.Length == 0 || cell.AsSpan().Trim("-\u2013\u2014").Length == 0;

    /// <summary>The number; false when the cell holds none in this way of writing.</summary>
    public static bool TryRead(string cell, DecimalMark mark, out double number)
    {
        number = 0;
        if (cell.Length > Longest) return false;
        var (decimals, groups) = mark == DecimalMark.Point ? ('.', ',') : (',', '.');
        var text = cell;
        if (text[0] == '\u2212') text = "-" + text[1..];
        if (text.Contains(groups, StringComparison.Ordinal))
        {
            if (!IsGrouped(text, groups, decimals)) return false;
            text = text.Replace(groups.ToString(), "", StringComparison.Ordinal);
        }

        if (decimals == ',') text = text.Replace(',', '.');
        return IsPlain(text) && double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number);
    }

    // Words such as NaN and Infinity would be read as numbers otherwise.
    private static bool IsPlain(string text)
    {
        var digits = 0;
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsAsciiDigit(text[i])) digits++;
            else if (text[i] != '.' && !(i == 0 && text[i] is '-' or '+')) return false;
        }

        return digits > 0;
    }

    /// <summary>Thousands are set apart in threes, before the decimals only: 2,650 and 1,234.5, never 12,5.</summary>
    private static bool IsGrouped(string text, char groups, char decimals)
    {
        var whole = text.Split(decimals)[0].TrimStart('-', '+');
        var parts = whole.Split(groups);
        return text.LastIndexOf(groups) < (text.IndexOf(decimals) is >= 0 and var at ? at : text.Length)
            && parts[0].Length is >= 1 and <= 3 && parts[0][0] != '0' && parts.Skip(1).All(p => p.Length == 3);
    }
}
