using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>What a student posts after practising, or instead of it.</summary>
public sealed record CheckInForm
{
    /// <summary>Made by the server when the form was shown; the same form posted twice is one check-in.</summary>
    public required Guid Id { get; init; }

    /// <summary>Null means today.</summary>
    public LocalDate? PracticedOn { get; init; }

    public int? Minutes { get; init; }

    /// <summary>Repetitions done out of those planned, percent; null when not said.</summary>
    public int? RepetitionsPercent { get; init; }

    /// <summary>The done-when count was reached today.</summary>
    public bool CountReached { get; init; }

    /// <summary>For which rung; may be left out when only one is worked on.</summary>
    public Guid? StageId { get; init; }

    public bool Pain { get; init; }

    public Region? PainRegion { get; init; }

    /// <summary>Signs that mean "seek emergency care now"; any of them is a pain report.</summary>
    public IReadOnlyList<EmergencySign> Signs { get; init; } = [];

    public string Comment { get; init; } = "";
}
