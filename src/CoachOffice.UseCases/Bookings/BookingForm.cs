using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>A lesson to be booked, as a person asks for it.</summary>
public sealed record BookingForm
{
    /// <summary>Made when the form was opened: sent twice is booked once. Null: a new one.</summary>
    public BookingId? Id { get; init; }

    public required OfferingId OfferingId { get; init; }

    public required AccountId CoachId { get; init; }

    public required PlaceId PlaceId { get; init; }

    /// <summary>Null: any bay or room of the offering's that is free there.</summary>
    public ResourceId? ResourceId { get; init; }

    /// <summary>Wall clock of the practice.</summary>
    public required LocalDateTime Start { get; init; }

    /// <summary>Null: as long as the offering.</summary>
    public int? Minutes { get; init; }

    public IReadOnlyList<StudentId> Students { get; init; } = [];

    /// <summary>Until when the seats are kept; null: booked at once.</summary>
    public Instant? HeldUntil { get; init; }

    public string Note { get; init; } = "";
}
