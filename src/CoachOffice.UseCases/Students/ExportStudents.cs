using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Imports;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Students.Imports;
using Microsoft.EntityFrameworkCore;
using NodaTime.Text;

namespace CoachOffice.UseCases.Students;

/// <summary>All students as a list that a spreadsheet opens and that an empty practice can be filled from again. It leaves the office's care, so only an owner takes it, and the history says when.</summary>
public sealed class ExportStudents(OfficeDb db, AuditTrail trail, ReadPractice practice)
{
    private static readonly StudentField[] Columns = [.. FieldWords.All.Except([StudentField.FullName, StudentField.HeightInches, StudentField.SpeedGoalMilesPerHour])];

    /// <summary>The bytes of a CSV file, archived students too, erased ones never; or that one may not.</summary>
    public async Task<Outcome<byte[]>> All(Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("take all students out of the office");
        var students = await db.Students.AsNoTracking().Where(s => s.ErasedAt == null).OrderBy(s => s.SearchText).ThenBy(s => s.Id).ToListAsync(stop);
        using var sheet = new CsvSheet();
        sheet.Row(Columns.Select(FieldWords.Of));
        foreach (var student in students) Write(sheet, student);
        trail.Add(actor, "students-exported", AuditSubject.Practice((await practice.Now(stop))!.Id), $"students:{students.Count}");
        await db.SaveChangesAsync(stop);
        return sheet.Bytes();
    }

    private static void Write(CsvSheet sheet, Student student)
    {
        foreach (var field in Columns)
        {
            if (NumberOf(student, field, out var number)) sheet.Number(number);
            else sheet.Text(TextOf(student, field));
        }

        sheet.End();
    }

    private static bool NumberOf(Student s, StudentField field, out double? number)
    {
        number = field switch
        {
            StudentField.MinutesPerWeek => s.MinutesPerWeek,
            StudentField.DaysPerWeek => s.DaysPerWeek,
            StudentField.HeightCm => s.HeightCm,
            StudentField.SpeedGoalMetresPerSecond => s.ClubSpeedGoalMetresPerSecond,
            _ => null,
        };
        return field is StudentField.MinutesPerWeek or StudentField.DaysPerWeek or StudentField.HeightCm or StudentField.SpeedGoalMetresPerSecond;
    }

    private static string TextOf(Student s, StudentField field) => field switch
    {
        StudentField.GivenName => s.GivenName,
        StudentField.FamilyName => s.FamilyName,
        StudentField.Email => s.Email,
        StudentField.Phone => s.Phone,
        StudentField.BirthDate => s.BirthDate is { } born ? LocalDatePattern.Iso.Format(born) : "",
        StudentField.GuardianName => s.Guardian?.Name ?? "",
        StudentField.GuardianEmail => s.Guardian?.Email ?? "",
        StudentField.GuardianPhone => s.Guardian?.Phone ?? "",
        StudentField.GuardianRelation => s.Guardian?.Relation ?? "",
        StudentField.Hand => Terms.Of(s.Hand),
        StudentField.Level => Terms.Of(s.Level),
        StudentField.Goals => string.Join(", ", s.Goals.Select(goal => Terms.Of(goal))),
        StudentField.Kit => string.Join(", ", s.Kit.Select(thing => Terms.Of(thing))),
        StudentField.Room => Terms.Of(s.Room),
        StudentField.Limits => LimitText.Of(s.Limits),
        StudentField.Notes => s.Notes,
        StudentField.Archived => s.ArchivedAt is null ? "no" : "yes",
        StudentField.NoReminders => s.MessagesStoppedAt is null ? "no" : "yes",
        _ => throw new ArgumentOutOfRangeException(nameof(field), field, "This field is not written."),
    };
}
