using NodaTime;

namespace CoachOffice.UseCases.Bookings.Visits;

/// <summary>Something a student waits for.</summary>
public sealed record WaitingView
{
    public required Guid Id { get; init; }

    public required string Offering { get; init; }

    /// <summary>Null: any coach.</summary>
    public string? Coach { get; init; }

    /// <summary>Start of the full lesson waited for, in the practice's zone; null: any time.</summary>
    public LocalDateTime? Lesson { get; init; }

    public required LocalDate FirstDay { get; init; }

    public required LocalDate LastDay { get; init; }
}
