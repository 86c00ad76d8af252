using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students;

/// <summary>Takes a student out of the archive.</summary>
public sealed class RestoreStudent(OfficeDb db, AuditTrail trail)
{
    /// <summary>The student; an erased one never comes back.</summary>
    public async Task<Outcome<StudentId>> Now(StudentId id, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("bring students back");
        var student = await db.Students.SingleOrDefaultAsync(s => s.Id == id && s.ErasedAt == null, stop);
        if (student is null) return StudentRefusals.NotFound;
        if (student.ArchivedAt is null) return id;
        student.Restore();
        trail.Add(actor, "student-restored", AuditSubject.Of(id));
        return await db.TrySave(stop) == Saved.Yes ? id : StudentRefusals.Busy;
    }
}
