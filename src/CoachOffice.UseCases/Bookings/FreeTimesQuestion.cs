using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>For what free times are sought.</summary>
public sealed record FreeTimesQuestion
{
    /// <summary>At most so many days at once: five weeks.</summary>
    public const int MostDays = 35;

    public required OfferingId OfferingId { get; init; }

    /// <summary>Null: any coach who gives it.</summary>
    public AccountId? CoachId { get; init; }

    /// <summary>First day, in the practice's zone.</summary>
    public required LocalDate From { get; init; }

    /// <summary>Last day.</summary>
    public required LocalDate Until { get; init; }

    /// <summary>Whose own lessons stand in the way.</summary>
    public StudentId? Student { get; init; }

    /// <summary>A booking that is to be moved: it stands in nobody's way, and its length counts, not the offering's of today.</summary>
    public BookingId? Moving { get; init; }
}
