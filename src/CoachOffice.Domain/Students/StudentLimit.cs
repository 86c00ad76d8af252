using NodaTime;

namespace CoachOffice.Domain.Students;

/// <summary>A limit as told on a day by someone; it withdraws drills and is never a diagnosis.</summary>
public sealed record StudentLimit
{
    public required Region Region { get; init; }

    public required LimitStatus Status { get; init; }

    /// <summary>The day it was noted.</summary>
    public required LocalDate NotedOn { get; init; }

    /// <summary>Who said so, e.g. "student", "physiotherapist's letter".</summary>
    public required string Source { get; init; }
}
