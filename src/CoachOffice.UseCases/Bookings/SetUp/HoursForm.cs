using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>Weekly hours as entered: the same from and until on one or more weekdays.</summary>
public sealed record HoursForm
{
    public required AccountId CoachId { get; init; }

    public required PlaceId PlaceId { get; init; }

    public IReadOnlyList<IsoDayOfWeek> Days { get; init; } = [];

    public required LocalTime From { get; init; }

    /// <summary>Midnight is the end of the day.</summary>
    public required LocalTime Until { get; init; }

    public required LocalDate ValidFrom { get; init; }

    public LocalDate? ValidUntil { get; init; }
}
