using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students;

/// <summary>Puts a student away: nothing is sent to them and they are found only among the archived.</summary>
public sealed class ArchiveStudent(OfficeDb db, PracticeClock clock, AuditTrail trail)
{
    /// <summary>The student; archiving twice is no fault.</summary>
    public async Task<Outcome<StudentId>> Now(StudentId id, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("archive students");
        var student = await db.Students.SingleOrDefaultAsync(s => s.Id == id && s.ErasedAt == null, stop);
        if (student is null) return StudentRefusals.NotFound;
        if (student.ArchivedAt is not null) return id;
        student.Archive(clock.Now);
        trail.Add(actor, "student-archived", AuditSubject.Of(id));
        return await db.TrySave(stop) == Saved.Yes ? id : StudentRefusals.Busy;
    }
}
