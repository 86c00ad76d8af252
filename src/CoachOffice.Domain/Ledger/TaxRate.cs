using System.Globalization;

namespace CoachOffice.Domain.Ledger;

/// <summary>A rate of value-added or sales tax.</summary>
/// <param name="BasisPoints">In hundredths of a percent, 0 to 10,000: 20 % is 2000, 8.875 % is not representable and is refused at input.</param>
public readonly record struct TaxRate(int BasisPoints)
{
    /// <summary>One whole in basis points.</summary>
    public const int Whole = 10_000;

    /// <summary>No tax.</summary>
    public static TaxRate None { get; } = new(0);

    /// <summary>For people: <c>17.5 %</c>.</summary>
    public override string ToString() => $"{BasisPoints / 100}{(BasisPoints % 100 == 0 ? "" : "." + (BasisPoints % 100).ToString("00", CultureInfo.InvariantCulture).TrimEnd('0'))}\u00A0%";
}
