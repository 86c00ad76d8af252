using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>A booking as the calendar shows it.</summary>
public sealed record CalendarBooking
{
    public required BookingId Id { get; init; }

    public required int Version { get; init; }

    public required string Offering { get; init; }

    public required OfferingKind Kind { get; init; }

    public required AccountId CoachId { get; init; }

    public required string Place { get; init; }

    /// <summary>Empty when none is needed.</summary>
    public required string Bay { get; init; }

    public required Instant Starts { get; init; }

    /// <summary>Exclusive.</summary>
    public required Instant Ends { get; init; }

    public required BookingStatus Status { get; init; }

    public required bool IsOfSeries { get; init; }

    public required int Capacity { get; init; }

    /// <summary>Who comes, by name.</summary>
    public IReadOnlyList<CalendarSeat> Seats { get; init; } = [];

    public Interval Time => new(Starts, Ends);
}
