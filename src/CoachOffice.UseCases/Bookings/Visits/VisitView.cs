using CoachOffice.Domain.Bookings;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Visits;

/// <summary>A lesson as its student sees it: nothing of other students is in it.</summary>
public sealed record VisitView
{
    public required BookingId Id { get; init; }

    public required OfferingId OfferingId { get; init; }

    public required string Offering { get; init; }

    public required string Coach { get; init; }

    /// <summary>Place and bay.</summary>
    public required string Place { get; init; }

    public required string Address { get; init; }

    /// <summary>IANA zone id of the lesson.</summary>
    public required string Zone { get; init; }

    public required LocalDateTime LocalStart { get; init; }

    public required Instant Starts { get; init; }

    public required Instant Ends { get; init; }

    public required int Minutes { get; init; }

    /// <summary>The student's latest seat in it.</summary>
    public required SeatStatus Status { get; init; }

    /// <summary>Until when it is kept; null unless held.</summary>
    public Instant? HeldUntil { get; init; }

    /// <summary>The waiting list offers it.</summary>
    public bool IsOffer { get; init; }

    public required long PriceMinor { get; init; }

    /// <summary>A credit of a package is reserved for it.</summary>
    public bool PaysByPackage { get; init; }

    /// <summary>What cancelling costs now.</summary>
    public required CancelCost Cost { get; init; }

    /// <summary>What cancelling costs once the notice is over.</summary>
    public required CancelCost CostLate { get; init; }

    /// <summary>When the student said "I am coming", or null.</summary>
    public Instant? ComingAt { get; init; }

    public bool MayMove { get; init; }

    public bool MayCancel { get; init; }
}
