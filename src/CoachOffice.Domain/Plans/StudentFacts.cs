using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;

namespace CoachOffice.Domain.Plans;

/// <summary>What a draft needs to know of the student, and nothing more (no name, no address).</summary>
public sealed record StudentFacts
{
    public required Hand Hand { get; init; }

    public required Level Level { get; init; }

    /// <summary>Year of birth; age is taken as the younger: year of the lesson - birth year - 1.</summary>
    public required int BirthYear { get; init; }

    /// <summary>In order of importance.</summary>
    public IReadOnlyList<Goal> Goals { get; init; } = [];

    public required int MinutesPerWeek { get; init; }

    public required int DaysPerWeek { get; init; }

    public IReadOnlyList<Kit> Kit { get; init; } = [];

    public required Room Room { get; init; }

    public IReadOnlyList<BodyLimit> Limits { get; init; } = [];

    /// <summary>Wanted club-head speed; null when speed is no aim.</summary>
    public Quantity? ClubSpeedGoal { get; init; }

    /// <summary>Stature in centimetres; null means the adult of 175 cm the ranges were made for.</summary>
    public double? HeightCm { get; init; }
}
