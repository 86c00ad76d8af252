namespace CoachOffice.Web.Features.Students;

/// <summary>A student's details as typed. Everything is text, so that what cannot be read is shown again as it was typed.</summary>
public sealed class StudentForm
{
    /// <summary>Made with the empty form; sending the same form twice makes one student.</summary>
    public Guid Id { get; set; }

    /// <summary>The version the form was filled from; 0 for a new student.</summary>
    public int Version { get; set; }

    /// <summary>True when height and speed are entered in inches and miles per hour.</summary>
    public bool Imperial { get; set; }

    public string? GivenName { get; set; }

    public string? FamilyName { get; set; }

    public string? Email { get; set; }

    public string? Phone { get; set; }

    public string? BirthDate { get; set; }

    public GuardianFields Guardian { get; set; } = new();

    public string? Hand { get; set; } = "right";

    public string? Level { get; set; } = "improver";

    public string? Room { get; set; } = "range";

    /// <summary>The most important first; empty entries don't count.</summary>
    public List<string?> Goals { get; set; } = [];

    public List<string> Kit { get; set; } = [];

    public string? MinutesPerWeek { get; set; } = "90";

    public string? DaysPerWeek { get; set; } = "3";

    public List<LimitFields> Limits { get; set; } = [];

    public string? ClubSpeedGoal { get; set; }

    public string? Height { get; set; }

    public string? Notes { get; set; }
}
