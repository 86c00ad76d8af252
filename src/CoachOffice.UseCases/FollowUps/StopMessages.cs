using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Ends reminders for the student of a stop link. A plan a coach approves is still delivered; re-tests stay on the coach's own list.</summary>
public sealed class StopMessages(OfficeDb db, StopPage page, AuditTrail trail, PracticeClock clock)
{
    /// <summary>What was stopped; the same link twice is the same answer.</summary>
    public async Task<Outcome<StopPass>> By(string token, CancellationToken stop = default)
    {
        if (await page.Of(token, stop) is not { } pass) return new Refusal("stop-link-not-found", "This link is no longer good. Reply to the mail, and your coach stops the reminders.");
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var now = clock.Now;
        await db.Students.Where(s => s.Id == pass.StudentId && s.MessagesStoppedAt == null)
            .ExecuteUpdateAsync(s => s.SetProperty(x => x.MessagesStoppedAt, (Instant?)now).SetProperty(x => x.Version, x => x.Version + 1), stop);
        await db.Messages.Where(m => m.StudentId == pass.StudentId && m.PlanId != null && m.Kind != MessageKind.PlanDelivery && (m.State == MessageState.Waiting || m.State == MessageState.Held))
            .ExecuteUpdateAsync(m => m.SetProperty(x => x.State, MessageState.Skipped).SetProperty(x => x.LastProblem, "messages-stopped"), stop);
        if (!pass.AlreadyStopped) trail.Add(Actor.Student, "messages-stopped", AuditSubject.Of(pass.StudentId));
        await db.SaveChangesAsync(stop);
        await transaction.CommitAsync(stop);
        return pass;
    }
}
