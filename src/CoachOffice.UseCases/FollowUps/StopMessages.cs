using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Ends messages of one purpose for the student of a stop link: those of the mail it stood in unless another is named.</summary>
public sealed class StopMessages(OfficeDb db, StopPage page, EndStopped end, AuditTrail trail, PracticeClock clock)
{
    /// <summary>What is stopped now; the same link twice is the same answer.</summary>
    public async Task<Outcome<StopPass>> By(string token, MessagePurpose? purpose = null, CancellationToken stop = default)
    {
        if (await page.Of(token, stop) is not { } pass) return StopRefusals.NotFound;
        var ended = purpose ?? pass.Purpose;
        if (!MessagePurposes.OfStudents.Contains(ended)) return StopRefusals.Unknown;
        if (pass.Stopped.ContainsKey(ended)) return pass;
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var student = await db.Students.SingleAsync(s => s.Id == pass.StudentId, stop);
        student.Stop(ended, clock.Now);
        trail.Add(Actor.Student, "messages-stopped", AuditSubject.Of(pass.StudentId), Terms.Of(ended));
        if (await db.TrySave(stop) != Saved.Yes) return StopRefusals.Busy;
        await end.Of(pass.StudentId, MessagePurposes.EndedBy(ended), ended == MessagePurpose.Plan ? Problems.PlansStopped : Problems.MessagesStopped, stop);
        await transaction.CommitAsync(stop);
        return pass with { Stopped = pass.Stopped.Append(new(ended, clock.Now)).ToDictionary() };
    }
}
