using CoachOffice.Domain.Students.Imports;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>What fields are called: to a person, in a list we write, and in lists of others.</summary>
public static class FieldWords
{
    private static readonly (StudentField Field, string Name, string[] Others)[] Words =
    [
        (StudentField.GivenName, "Given name", ["first name", "forename", "firstname", "given names"]),
        (StudentField.FamilyName, "Family name", ["last name", "surname", "lastname"]),
        (StudentField.FullName, "Whole name", ["name", "full name", "student", "student name", "player", "pupil", "client"]),
        (StudentField.Email, "Mail", ["email", "e mail", "mail address", "email address", "e mail address"]),
        (StudentField.Phone, "Phone", ["phone number", "telephone", "mobile", "mobile phone", "cell", "cell phone", "tel"]),
        (StudentField.BirthDate, "Birth date", ["date of birth", "birthday", "dob", "born", "birthdate"]),
        (StudentField.GuardianName, "Guardian's name", ["guardian", "guardian name", "parent", "parent name", "parent or guardian"]),
        (StudentField.GuardianEmail, "Guardian's mail", ["guardian mail", "guardian email", "parent mail", "parent email", "parent e mail"]),
        (StudentField.GuardianPhone, "Guardian's phone", ["guardian phone", "parent phone", "parent mobile"]),
        (StudentField.GuardianRelation, "Guardian's relation", ["relation", "relationship", "guardian relation"]),
        (StudentField.Hand, "Plays", ["hand", "handed", "handedness", "plays handed", "dominant hand", "playing hand"]),
        (StudentField.Level, "Level", ["ability", "playing level"]),
        (StudentField.Goals, "Goals", ["goal", "aims"]),
        (StudentField.Kit, "Has at hand", ["kit"]),
        (StudentField.Room, "Practises mostly", ["practises at", "practices at"]),
        (StudentField.MinutesPerWeek, "Minutes a week", ["minutes per week"]),
        (StudentField.DaysPerWeek, "Days a week", ["days per week"]),
        (StudentField.HeightCm, "Height (cm)", ["height cm"]),
        (StudentField.HeightInches, "Height (in)", ["height in", "height inches", "height (inches)"]),
        (StudentField.SpeedGoalMetresPerSecond, "Club speed goal (m/s)", []),
        (StudentField.SpeedGoalMilesPerHour, "Club speed goal (mph)", []),
        (StudentField.Limits, "Limits", []),
        (StudentField.Notes, "Notes", ["note", "comment", "comments", "remarks"]),
        (StudentField.Archived, "Archived", []),
        (StudentField.NoReminders, "No reminders", []),
    ];

    /// <summary>All fields, in the order they are offered.</summary>
    public static IReadOnlyList<StudentField> All { get; } = [.. Words.Select(w => w.Field)];

    /// <summary>A field's name.</summary>
    public static string Of(StudentField field) => Words.Single(w => w.Field == field).Name;

    /// <summary>The field a column's plain name tells of, or null.</summary>
    internal static StudentField? Find(string plain)
    {
        foreach (var (field, name, others) in Words)
            if (name.Equals(plain, StringComparison.OrdinalIgnoreCase) || others.Contains(plain, StringComparer.Ordinal)) return field;
        return null;
    }
}
