using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>The guardian told a person of the practice that they agree again; messages go to them from now on.</summary>
public sealed class LetGuardianBack(OfficeDb db, AuditTrail trail)
{
    /// <summary>The student's id, or why not.</summary>
    public async Task<Outcome<StudentId>> For(StudentId student, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("change what students receive");
        var found = await db.Students.SingleOrDefaultAsync(s => s.Id == student && s.ErasedAt == null, stop);
        if (found is null) return new Refusal("student-not-found", "There is no such student.");
        found.GuardianAgrees();
        trail.Add(actor, "guardian-agreed", AuditSubject.Of(student));
        return await db.TrySave(stop) == Saved.Yes ? student : new Refusal(Clash.Code, "Someone changed this student just now; look again, then repeat it.");
    }
}
