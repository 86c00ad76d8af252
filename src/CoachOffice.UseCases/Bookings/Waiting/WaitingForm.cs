using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Waiting;

/// <summary>What a student waits for, as asked.</summary>
public sealed record WaitingForm
{
    /// <summary>Made when the page was opened: sent twice is joined once.</summary>
    public required Guid Id { get; init; }

    public required OfferingId OfferingId { get; init; }

    /// <summary>Null: any coach.</summary>
    public AccountId? CoachId { get; init; }

    /// <summary>A full lesson; null: any time between the days.</summary>
    public BookingId? BookingId { get; init; }

    public required LocalDate FirstDay { get; init; }

    public required LocalDate LastDay { get; init; }
}
