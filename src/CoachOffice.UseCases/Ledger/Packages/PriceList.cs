using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;

namespace CoachOffice.UseCases.Ledger.Packages;

/// <summary>What the practice sells.</summary>
/// <param name="Currency">Of all prices.</param>
/// <param name="Mode">Whether prices hold the tax.</param>
/// <param name="Offerings">Lessons and reviews, without those no longer offered.</param>
/// <param name="Packages">Packages; no longer sold ones last.</param>
public sealed record PriceList(Currency Currency, TaxMode Mode, IReadOnlyList<Offering> Offerings, IReadOnlyList<PackageOffer> Packages);
