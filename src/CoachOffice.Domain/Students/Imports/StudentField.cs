namespace CoachOffice.Domain.Students.Imports;

/// <summary>What a column of a list of students can hold.</summary>
public enum StudentField
{
    GivenName,
    FamilyName,
    FullName,
    Email,
    Phone,
    BirthDate,
    GuardianName,
    GuardianEmail,
    GuardianPhone,
    GuardianRelation,
    Hand,
    Level,
    Goals,
    Kit,
    Room,
    MinutesPerWeek,
    DaysPerWeek,

    /// <summary>Stature in cm.</summary>
    HeightCm,

    /// <summary>Stature in inches.</summary>
    HeightInches,

    /// <summary>Wanted club-head speed in m/s.</summary>
    SpeedGoalMetresPerSecond,

    /// <summary>Wanted club-head speed in mph.</summary>
    SpeedGoalMilesPerHour,
    Limits,
    Notes,

    /// <summary>Whether the student is put away: yes or no.</summary>
    Archived,

    /// <summary>Whether the student asked for no more reminders: yes or no.</summary>
    NoReminders,
}
