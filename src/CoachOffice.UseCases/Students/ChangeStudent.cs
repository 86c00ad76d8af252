using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students;

/// <summary>Saves what a person changed about a student.</summary>
public sealed class ChangeStudent(OfficeDb db, PracticeClock clock, AuditTrail trail, Clash clash)
{
    /// <summary>The student, or why not; a clash says who saved meanwhile and shows both values of each field that differs.</summary>
    /// <param name="id">Whom.</param>
    /// <param name="version">The version the form was filled from.</param>
    /// <param name="details">As entered.</param>
    /// <param name="actor">Who does it.</param>
    /// <param name="stop">Ends the wait.</param>
    public async Task<Outcome<StudentId>> To(StudentId id, int version, StudentDetails details, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("change students");
        var student = await db.Students.SingleOrDefaultAsync(s => s.Id == id, stop);
        if (student is null || student.ErasedAt is not null) return StudentRefusals.NotFound;
        var wrong = StudentCheck.Of(details, await clock.Today(stop));
        if (wrong.Count > 0) return Outcome<StudentId>.Refused(wrong);
        if (student.Version != version) return await Clashed(student, details, stop);
        student.Change(details);
        trail.Add(actor, "student-changed", AuditSubject.Of(id));
        if (await db.TrySave(stop) == Saved.Yes) return id;
        db.ChangeTracker.Clear();
        return await Clashed(await db.Students.SingleAsync(s => s.Id == id, stop), details, stop);
    }

    private async Task<Outcome<StudentId>> Clashed(Student kept, StudentDetails yours, CancellationToken stop)
    {
        var differences = StudentFields.Compare(kept, Student.Register(kept.Id, yours, kept.AddedAt));
        return Outcome<StudentId>.Refused(await clash.Over(AuditSubject.Of(kept.Id), "this student", differences, stop));
    }
}
