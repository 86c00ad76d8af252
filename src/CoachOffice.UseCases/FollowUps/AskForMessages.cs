using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Whoever holds a stop link asks for messages of one purpose again. What was left out meanwhile stays left out.</summary>
public sealed class AskForMessages(OfficeDb db, StopPage page, AuditTrail trail)
{
    /// <summary>What is stopped now, or why not.</summary>
    public async Task<Outcome<StopPass>> By(string token, MessagePurpose purpose, CancellationToken stop = default)
    {
        if (await page.Of(token, stop) is not { } pass) return StopRefusals.NotFound;
        if (!pass.Stopped.ContainsKey(purpose)) return pass;
        var student = await db.Students.SingleAsync(s => s.Id == pass.StudentId, stop);
        student.Allow(purpose);
        trail.Add(Actor.Student, "messages-asked-for", AuditSubject.Of(pass.StudentId), Terms.Of(purpose));
        if (await db.TrySave(stop) != Saved.Yes) return StopRefusals.Busy;
        return pass with { Stopped = pass.Stopped.Where(s => s.Key != purpose).ToDictionary() };
    }
}
