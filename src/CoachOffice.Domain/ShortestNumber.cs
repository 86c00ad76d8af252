using System.Globalization;

namespace CoachOffice.Domain;

/// <summary>A double in the form ECMAScript gives it (ECMA-262, Number::toString): the fewest digits that read back to the same value.</summary>
internal static class ShortestNumber
{
    /// <summary>The text; throws <see cref="ArgumentException"/> for NaN and infinities, which JSON does not have.</summary>
    public static string Of(double value)
    {
        if (!double.IsFinite(value)) throw new ArgumentException("JSON has no such number.", nameof(value));
        if (value == 0) return "0";

        // Where .NET writes no exponent, ECMAScript writes the very same.
        var plain = value.ToString("R", CultureInfo.InvariantCulture);
        if (!plain.Contains('E', StringComparison.Ordinal)) return plain;
        var (digits, point) = Parts(Math.Abs(value));
        return (value < 0 ? "-" : "") + Lay(digits, point);
    }

    // value = 0.DIGITS x 10^point; .NET's default form already has the fewest digits, only its layout differs.
    private static (string Digits, int Point) Parts(double value)
    {
        var text = value.ToString("R", CultureInfo.InvariantCulture);
        var e = text.IndexOf('E', StringComparison.Ordinal);
        var exponent = e < 0 ? 0 : int.Parse(text.AsSpan(e + 1), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        var mantissa = e < 0 ? text : text[..e];
        var dot = mantissa.IndexOf('.', StringComparison.Ordinal);
        var all = mantissa.Replace(".", "", StringComparison.Ordinal);
        var digits = all.TrimStart('0');
        var point = (dot < 0 ? mantissa.Length : dot) + exponent - (all.Length - digits.Length);
        return (digits.TrimEnd('0'), point);
    }

    private static string Lay(string digits, int point)
    {
        if (point is > 0 and <= 21)
            return digits.Length <= point ? digits.PadRight(point, '0') : $"{digits[..point]}.{digits[point..]}";
        if (point is > -6 and <= 0) return $"0.{new string('0', -point)}{digits}";
        var exponent = (point - 1).ToString("+0;-0", CultureInfo.InvariantCulture);
        return digits.Length == 1 ? $"{digits}e{exponent}" : $"{digits[0]}.{digits[1..]}e{exponent}";
    }
}
