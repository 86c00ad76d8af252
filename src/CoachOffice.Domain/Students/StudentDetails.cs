using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.Domain.Students;

/// <summary>All that a person enters about a student.</summary>
public sealed record StudentDetails
{
    public required string GivenName { get; init; }

    public string FamilyName { get; init; } = "";

    public string Email { get; init; } = "";

    public string Phone { get; init; } = "";

    public LocalDate? BirthDate { get; init; }

    public Guardian? Guardian { get; init; }

    public Hand Hand { get; init; }

    public Level Level { get; init; }

    /// <summary>In order of importance.</summary>
    public IReadOnlyList<Goal> Goals { get; init; } = [];

    public IReadOnlyList<Kit> Kit { get; init; } = [];

    public Room Room { get; init; } = Room.Range;

    public int MinutesPerWeek { get; init; } = 90;

    public int DaysPerWeek { get; init; } = 3;

    public IReadOnlyList<StudentLimit> Limits { get; init; } = [];

    /// <summary>Wanted club-head speed, any unit of speed.</summary>
    public Quantity? ClubSpeedGoal { get; init; }

    /// <summary>Stature, any unit of length.</summary>
    public Quantity? Height { get; init; }

    public string Notes { get; init; } = "";
}
