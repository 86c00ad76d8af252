using CoachOffice.Domain.Bookings;

namespace CoachOffice.UseCases.Bookings;

/// <summary>What a booking form names, looked up.</summary>
/// <param name="Offering">What is booked.</param>
/// <param name="Bays">Bays or rooms to choose from; empty when none is needed.</param>
public sealed record AskedFor(Offering Offering, IReadOnlyList<ResourceId> Bays);
