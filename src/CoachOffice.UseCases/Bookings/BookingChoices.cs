using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;

namespace CoachOffice.UseCases.Bookings;

/// <summary>What a booking form offers to choose from.</summary>
/// <param name="Offerings">What is on offer, by name; remote reviews are not booked.</param>
/// <param name="Coaches">Who teaches.</param>
/// <param name="Places">Where.</param>
/// <param name="Bays">Bays and rooms, each with its place.</param>
public sealed record BookingChoices(IReadOnlyList<OfferingChoice> Offerings, IReadOnlyList<CoachName> Coaches, IReadOnlyList<PlaceChoice> Places, IReadOnlyList<BayChoice> Bays);

/// <summary>An offering to choose.</summary>
public sealed record OfferingChoice(OfferingId Id, string Name, OfferingKind Kind, int Minutes, int Capacity, IReadOnlyList<AccountId> Coaches)
{
    /// <summary>Where it may be given.</summary>
    public IReadOnlyList<PlaceId> Places { get; init; } = [];
}

/// <summary>A place to choose.</summary>
public sealed record PlaceChoice(PlaceId Id, string Name);

/// <summary>A bay or room to choose.</summary>
public sealed record BayChoice(ResourceId Id, PlaceId Place, string Name);
