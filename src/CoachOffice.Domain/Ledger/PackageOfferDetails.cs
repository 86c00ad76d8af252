using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;

namespace CoachOffice.Domain.Ledger;

/// <summary>What a person enters about a package on the price list.</summary>
public sealed record PackageOfferDetails
{
    public required string Name { get; init; }

    /// <summary>How many lessons it holds.</summary>
    public required int Lessons { get; init; }

    /// <summary>Which offerings it pays for; empty = every one.</summary>
    public IReadOnlyList<OfferingId> Offerings { get; init; } = [];

    /// <summary>Price of the whole, in the smallest unit of the practice's currency.</summary>
    public required long PriceMinor { get; init; }

    /// <summary>Rate of tax in hundredths of a percent.</summary>
    public int TaxBasisPoints { get; init; }

    /// <summary>Months from the sale until it ends; null = never.</summary>
    public int? ValidMonths { get; init; } = 12;

    /// <summary>True when others of the household may use its lessons.</summary>
    public bool IsShared { get; init; }

    /// <summary>Everything that is wrong, each with its field and what would be right.</summary>
    public IReadOnlyList<Refusal> Check() => [.. CheckName(), .. CheckNumbers()];

    private IEnumerable<Refusal> CheckName()
    {
        if (!OneLine.Shows(Name) || Name.Trim().Length > 120) yield return new("package-name", "Give the package a name of up to 120 characters.", nameof(Name));
        else if (!OneLine.Fits(Name) || Name != StudentSearch.Whole(Name)) yield return new("package-name-line", OneLine.Wanted, nameof(Name));
        else if (CardNumbers.LooksLikeOne(Name)) yield return new("package-name-card", "This name looks like the number of a card; write words.", nameof(Name));
    }

    private IEnumerable<Refusal> CheckNumbers()
    {
        if (Lessons is < 1 or > 500) yield return new("package-lessons", "A package holds 1 to 500 lessons.", nameof(Lessons));
        if (PriceMinor is < 0 or > 1_000_000_000) yield return new("package-price", "Write a price of 0 or more.", nameof(PriceMinor));
        if (TaxBasisPoints is < 0 or > TaxRate.Whole) yield return new("package-tax", "Write a tax rate from 0 to 100 percent.", nameof(TaxBasisPoints));
        if (ValidMonths is < 1 or > 120) yield return new("package-months", "A package ends after 1 to 120 months; leave it empty when it never does.", nameof(ValidMonths));
        if (Offerings.Distinct().Count() != Offerings.Count) yield return new("package-offerings", "Name each offering once.", nameof(Offerings));
    }
}
