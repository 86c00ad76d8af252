using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Where a booking is to go; what is null stays as it is.</summary>
public sealed record MoveForm
{
    /// <summary>Wall clock of the practice.</summary>
    public LocalDateTime? Start { get; init; }

    public int? Minutes { get; init; }

    public AccountId? CoachId { get; init; }

    public PlaceId? PlaceId { get; init; }

    /// <summary>Null: the same bay when it is free at the new time, else any that is.</summary>
    public ResourceId? ResourceId { get; init; }
}
