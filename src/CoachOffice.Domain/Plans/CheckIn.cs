using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Plans;

/// <summary>What a student reported after practising, or instead of it. Insert-only.</summary>
public sealed record CheckIn
{
    /// <summary>Made by the server when the form was shown, so that a form posted twice is one check-in.</summary>
    public required Guid Id { get; init; }

    public required PlanId PlanId { get; init; }

    public required StudentId StudentId { get; init; }

    public required Instant At { get; init; }

    /// <summary>The day they practised, in the practice's zone.</summary>
    public required LocalDate PracticedOn { get; init; }

    public required int Minutes { get; init; }

    /// <summary>Repetitions done out of those planned, percent; null when not said.</summary>
    public int? RepetitionsPercent { get; init; }

    /// <summary>Done-when count reached today, as the student says.</summary>
    public bool CountReached { get; init; }

    /// <summary>The rung whose count was reached; null when not said, or when it was not reached.</summary>
    public Guid? StageId { get; init; }

    public bool Pain { get; init; }

    public Region? PainRegion { get; init; }

    /// <summary>One of the signs that mean "seek emergency care now" was ticked.</summary>
    public bool Emergency { get; init; }

    public string Comment { get; init; } = "";

    /// <summary>Set when a coach has dealt with a pain report.</summary>
    public Instant? SeenAt { get; init; }
}
