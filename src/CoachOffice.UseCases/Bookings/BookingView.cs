using CoachOffice.Domain.Bookings;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>One booking with all that can be done about it.</summary>
public sealed record BookingView
{
    public required CalendarBooking Booking { get; init; }

    public required string Coach { get; init; }

    public required PlaceId PlaceId { get; init; }

    public required ResourceId? ResourceId { get; init; }

    public required OfferingId OfferingId { get; init; }

    public required int Minutes { get; init; }

    public required string Note { get; init; }

    public required Instant? HeldUntil { get; init; }

    public required DateTimeZone Zone { get; init; }

    public required Instant Now { get; init; }

    /// <summary>What cancelling would cost each open seat now, if the student wants it.</summary>
    public required IReadOnlyDictionary<SeatId, CancelCost> Costs { get; init; }

    /// <summary>Seats that ended: cancelled or lapsed.</summary>
    public required IReadOnlyList<CalendarSeat> Gone { get; init; }

    /// <summary>The series it belongs to, or null.</summary>
    public required SeriesId? SeriesId { get; init; }

    public required string Currency { get; init; }

    /// <summary>Whether the coach is at work there then; of a lesson that is over or off nobody asks.</summary>
    public required WorkThen Work { get; init; }
}
