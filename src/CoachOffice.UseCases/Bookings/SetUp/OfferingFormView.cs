using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>What the form of an offering is filled from.</summary>
/// <param name="Kept">As kept; null for a new one.</param>
/// <param name="Coaches">To choose from, those with a closed account too.</param>
/// <param name="Places">To choose from, with their bays.</param>
/// <param name="SetUp">What is still missing.</param>
/// <param name="Currency">Of the practice.</param>
public sealed record OfferingFormView(Offering? Kept, IReadOnlyList<CoachName> Coaches, PlacesView Places, SetUpState SetUp, Currency Currency);
