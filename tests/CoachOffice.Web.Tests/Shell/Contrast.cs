using System.Globalization;

namespace CoachOffice.Web.Tests.Shell;

/// <summary>WCAG 2.2: relative luminance of sRGB colours and the contrast ratio of two of them.</summary>
internal static class Contrast
{
    public static double Ratio(string one, string other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string hex)
    {
        var digits = hex.TrimStart('#');
        if (digits.Length == 3) digits = string.Concat(digits.Select(d => $"{d}{d}"));
        return 0.2126 * Channel(digits, 0) + 0.7152 * Channel(digits, 2) + 0.0722 * Channel(digits, 4);
    }

    private static double Channel(string digits, int at)
    {
        var c = int.Parse(digits.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
    }
}
