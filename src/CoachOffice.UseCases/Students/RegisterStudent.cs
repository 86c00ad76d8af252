using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students;

/// <summary>Adds a student.</summary>
public sealed class RegisterStudent(OfficeDb db, PracticeClock clock, INewIds ids, AuditTrail trail)
{
    /// <summary>The new student, or everything that is wrong with the details.</summary>
    public Task<Outcome<StudentId>> From(StudentDetails details, Actor actor, CancellationToken stop = default) =>
        From(StudentId.From(ids.Next()), details, actor, stop);

    /// <summary>The same under an id made when the form was shown, so that a form posted twice adds one student.</summary>
    public async Task<Outcome<StudentId>> From(StudentId id, StudentDetails details, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(details);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("add students");
        var wrong = StudentCheck.Of(details, await clock.Today(stop));
        if (wrong.Count > 0) return Outcome<StudentId>.Refused(wrong);
        if (await db.Students.AnyAsync(s => s.Id == id, stop)) return id;
        db.Students.Add(Student.Register(id, details, clock.Now));
        trail.Add(actor, "student-added", AuditSubject.Of(id));

        // Twice at the very same moment: the other one added it.
        await db.TrySave(stop);
        return id;
    }
}
