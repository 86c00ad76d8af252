using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Imports;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>Fills empty fields of a student from a row; nothing that stands is changed. What is never empty, such as the hand, is never filled.</summary>
internal static class StudentFilling
{
    private static readonly (StudentField Field, Func<StudentDetails, bool> IsEmpty, Func<StudentDetails, StudentDetails, StudentDetails> Take)[] Fields =
    [
        (StudentField.FamilyName, d => d.FamilyName.Length == 0, (d, from) => d with { FamilyName = from.FamilyName }),
        (StudentField.Email, d => d.Email.Length == 0, (d, from) => d with { Email = from.Email }),
        (StudentField.Phone, d => d.Phone.Length == 0, (d, from) => d with { Phone = from.Phone }),
        (StudentField.BirthDate, d => d.BirthDate is null, (d, from) => d with { BirthDate = from.BirthDate }),
        (StudentField.GuardianName, d => d.Guardian is null, (d, from) => d with { Guardian = from.Guardian }),
        (StudentField.Goals, d => d.Goals.Count == 0, (d, from) => d with { Goals = from.Goals }),
        (StudentField.Kit, d => d.Kit.Count == 0, (d, from) => d with { Kit = from.Kit }),
        (StudentField.HeightCm, d => d.Height is null, (d, from) => d with { Height = from.Height }),
        (StudentField.SpeedGoalMetresPerSecond, d => d.ClubSpeedGoal is null, (d, from) => d with { ClubSpeedGoal = from.ClubSpeedGoal }),
        (StudentField.Limits, d => d.Limits.Count == 0, (d, from) => d with { Limits = from.Limits }),
        (StudentField.Notes, d => d.Notes.Length == 0, (d, from) => d with { Notes = from.Notes }),
    ];

    private static readonly StudentDetails Nothing = new() { GivenName = "" };

    /// <summary>The details with what the row has and they have not, and which fields that are.</summary>
    public static (StudentDetails Details, IReadOnlyList<StudentField> Filled) Fill(StudentDetails there, StudentDetails row)
    {
        var filled = Fields.Where(f => f.IsEmpty(there) && !f.IsEmpty(row)).ToList();
        return (filled.Aggregate(there, (details, f) => f.Take(details, row)), [.. filled.Select(f => f.Field)]);
    }

    /// <summary>The details with these fields empty again.</summary>
    public static StudentDetails Empty(StudentDetails there, IReadOnlyList<StudentField> fields) =>
        Fields.Where(f => fields.Contains(f.Field)).Aggregate(there, (details, f) => f.Take(details, Nothing));
}
