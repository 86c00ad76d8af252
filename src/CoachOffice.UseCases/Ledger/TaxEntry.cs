using System.Globalization;
using CoachOffice.Domain;
using CoachOffice.Domain.Ledger;

namespace CoachOffice.UseCases.Ledger;

/// <summary>Reads a rate of tax as people type it: percent, a point or a comma, at most two decimals.</summary>
public static class TaxEntry
{
    /// <summary>The rate, or a refusal; an empty text is no tax.</summary>
    public static Outcome<TaxRate> Parse(string? text, string field)
    {
        var typed = (text ?? "").Replace(',', '.').Replace("%", "", StringComparison.Ordinal).Trim();
        if (typed.Length == 0) return TaxRate.None;
        return decimal.TryParse(typed, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var percent) && percent <= 100 && decimal.Truncate(percent * 100) == percent * 100
            ? new TaxRate((int)(percent * 100))
            : new Refusal("tax-rate", "Write the tax in percent, from 0 to 100, such as 20 or 17,5.", field);
    }

    /// <summary>As a field shows it.</summary>
    public static string Of(int basisPoints) => (basisPoints / 100m).ToString("0.##", CultureInfo.InvariantCulture);
}
