using CoachOffice.Domain;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;

namespace CoachOffice.UseCases.Ledger.Packages;

/// <summary>A package on the price list, as typed.</summary>
public sealed record PackageOfferForm
{
    public required string Name { get; init; }

    public int? Lessons { get; init; }

    public IReadOnlyList<OfferingId> Offerings { get; init; } = [];

    /// <summary>In the practice's currency.</summary>
    public required string Price { get; init; }

    /// <summary>Percent; empty = none.</summary>
    public string TaxPercent { get; init; } = "";

    /// <summary>Empty = no end.</summary>
    public int? ValidMonths { get; init; }

    public bool IsShared { get; init; }

    /// <summary>The details, or everything that is wrong.</summary>
    public Outcome<PackageOfferDetails> Read(Currency currency)
    {
        var price = MoneyText.Parse(Price, currency);
        var rate = TaxEntry.Parse(TaxPercent, nameof(TaxPercent));
        var details = new PackageOfferDetails
        {
            Name = Name,
            Lessons = Lessons ?? 0,
            Offerings = Offerings,
            PriceMinor = price.Succeeded ? price.Value.MinorUnits : 0,
            TaxBasisPoints = rate.Succeeded ? rate.Value.BasisPoints : 0,
            ValidMonths = ValidMonths,
            IsShared = IsShared,
        };
        List<Refusal> wrong = [.. details.Check().Select(r => r.Field == nameof(details.PriceMinor) ? r with { Field = nameof(Price) } : r), .. price.Refusals.Select(r => r with { Field = nameof(Price) }), .. rate.Refusals];
        return wrong.Count > 0 ? Outcome<PackageOfferDetails>.Refused(wrong) : details;
    }
}
