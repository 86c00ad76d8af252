using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Visits;

/// <summary>A free time a student chose.</summary>
public sealed record HoldForm
{
    /// <summary>Made when the page was opened: sent twice is held once.</summary>
    public required BookingId Id { get; init; }

    public required OfferingId OfferingId { get; init; }

    public required AccountId CoachId { get; init; }

    public required PlaceId PlaceId { get; init; }

    /// <summary>Wall clock of the practice.</summary>
    public required LocalDateTime Start { get; init; }
}
