using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students;

/// <summary>Removes a person for good. Figures, states and dates stay under a pseudonym; every word about or by the person goes.</summary>
public sealed class EraseStudent(OfficeDb db, PracticeClock clock, AuditTrail trail, StudentTraces traces, ForgetThePast forget)
{
    /// <summary>The pseudonymous student, or why not. Cannot be undone; copies of the database made before keep what they held.</summary>
    public async Task<Outcome<StudentId>> ForGood(StudentId id, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("erase students");
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var student = await db.Students.SingleOrDefaultAsync(s => s.Id == id, stop);
        if (student is null || student.ErasedAt is not null) return StudentRefusals.NotFound;
        student.Erase(clock.Now);
        trail.Add(actor, "student-erased", AuditSubject.Of(id));
        if (await db.TrySave(stop) != Saved.Yes) return StudentRefusals.Busy;
        var files = await traces.Remove(student, actor, clock.Now, stop);
        await transaction.CommitAsync(stop);

        // Files cannot take part in a transaction: they go last, when the person is already gone from the database.
        await traces.Delete(files, CancellationToken.None);
        await forget.Now(CancellationToken.None);
        return id;
    }
}
