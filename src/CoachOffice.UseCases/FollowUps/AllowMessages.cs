using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Lets messages of one purpose go to a student again who had stopped them and asked a person for them anew. What was left out meanwhile stays left out.</summary>
public sealed class AllowMessages(OfficeDb db, AuditTrail trail)
{
    /// <summary>The student's id, or why not.</summary>
    public async Task<Outcome<StudentId>> For(StudentId student, MessagePurpose purpose, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("change what students receive");
        var found = await db.Students.SingleOrDefaultAsync(s => s.Id == student && s.ErasedAt == null, stop);
        if (found is null) return new Refusal("student-not-found", "There is no such student.");
        found.Allow(purpose);
        trail.Add(actor, "messages-allowed", AuditSubject.Of(student), Terms.Of(purpose));
        return await db.TrySave(stop) == Saved.Yes ? student : new Refusal(Clash.Code, "Someone changed this student just now; look again, then repeat it.");
    }
}
