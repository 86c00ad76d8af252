using CoachOffice.Domain.Bookings;
using NodaTime;

namespace CoachOffice.Domain.Ledger;

/// <summary>A package on the price list. What was sold keeps what it was sold with.</summary>
public sealed class PackageOffer
{
    private PackageOffer()
    {
    }

    public PackageOfferId Id { get; private set; }

    public string Name { get; private set; } = "";

    public int Lessons { get; private set; }

    /// <summary>Which offerings it pays for; empty = every one.</summary>
    public IReadOnlyList<OfferingId> Offerings { get; private set; } = [];

    /// <summary>Price of the whole, in the smallest unit of the practice's currency.</summary>
    public long PriceMinor { get; private set; }

    /// <summary>Rate of tax in hundredths of a percent.</summary>
    public int TaxBasisPoints { get; private set; }

    /// <summary>Months from the sale until it ends; null = never.</summary>
    public int? ValidMonths { get; private set; }

    /// <summary>True when others of the household may use its lessons.</summary>
    public bool IsShared { get; private set; }

    public Instant AddedAt { get; private set; }

    /// <summary>Since when it is no longer sold.</summary>
    public Instant? ArchivedAt { get; private set; }

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    /// <summary>A new package on the list; checked before by <see cref="PackageOfferDetails.Check"/>.</summary>
    public static PackageOffer Of(PackageOfferId id, PackageOfferDetails details, Instant now)
    {
        var offer = new PackageOffer { Id = id, AddedAt = now };
        offer.Change(details);
        return offer;
    }

    /// <summary>Takes over what a person entered.</summary>
    public void Change(PackageOfferDetails details)
    {
        ArgumentNullException.ThrowIfNull(details);
        (Name, Lessons, Offerings) = (details.Name.Trim(), details.Lessons, [.. details.Offerings]);
        (PriceMinor, TaxBasisPoints) = (details.PriceMinor, details.TaxBasisPoints);
        (ValidMonths, IsShared) = (details.ValidMonths, details.IsShared);
    }

    public void Archive(Instant now) => ArchivedAt ??= now;

    public void Restore() => ArchivedAt = null;
}
