using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>A booking outside the hours of its coach.</summary>
public sealed record OutsideBooking
{
    public required BookingId Id { get; init; }

    public required AccountId CoachId { get; init; }

    public required LocalDateTime LocalStart { get; init; }

    public required string Offering { get; init; }

    public required string Place { get; init; }

    public required WorkThen Then { get; init; }
}
