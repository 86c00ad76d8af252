using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Ledger;

/// <summary>Lessons bought ahead. How many are used is counted from the ledger, never a number that is edited.</summary>
public sealed class Package
{
    private Package()
    {
    }

    public PackageId Id { get; private set; }

    public PackageOfferId OfferId { get; private set; }

    public PayerId PayerId { get; private set; }

    /// <summary>For whom it was bought.</summary>
    public StudentId StudentId { get; private set; }

    /// <summary>True when others of the household may use its lessons.</summary>
    public bool IsShared { get; private set; }

    public string Name { get; private set; } = "";

    public int Lessons { get; private set; }

    /// <summary>Which offerings it pays for; empty = every one.</summary>
    public IReadOnlyList<OfferingId> Offerings { get; private set; } = [];

    /// <summary>Rate of tax it was sold with, in hundredths of a percent.</summary>
    public int TaxBasisPoints { get; private set; }

    public LocalDate SoldOn { get; private set; }

    /// <summary>The last day of a lesson it pays for; null = no end.</summary>
    public LocalDate? ValidUntil { get; private set; }

    /// <summary>Set when its sale was taken back or its lessons were given back.</summary>
    public Instant? ClosedAt { get; private set; }

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    /// <summary>Sold today as the price list says.</summary>
    public static Package Sell(PackageId id, PackageOffer offer, PayerId payer, StudentId student, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(offer);
        return new Package
        {
            Id = id,
            OfferId = offer.Id,
            PayerId = payer,
            StudentId = student,
            IsShared = offer.IsShared,
            Name = offer.Name,
            Lessons = offer.Lessons,
            Offerings = offer.Offerings,
            TaxBasisPoints = offer.TaxBasisPoints,
            SoldOn = today,
            ValidUntil = offer.ValidMonths is { } months ? today.PlusMonths(months) : null,
        };
    }

    /// <summary>True when a lesson of this kind on this day may be taken from it.</summary>
    public bool PaysFor(OfferingId offering, LocalDate day) => ClosedAt is null && (Offerings.Count == 0 || Offerings.Contains(offering)) && (ValidUntil is null || day <= ValidUntil);

    /// <summary>True when its last day is over.</summary>
    public bool HasEndedBy(LocalDate today) => ValidUntil < today;

    /// <summary>Moves its last day.</summary>
    public void ExtendTo(LocalDate day) => ValidUntil = day;

    /// <summary>Nothing more is taken from it.</summary>
    public void Close(Instant now) => ClosedAt ??= now;
}
