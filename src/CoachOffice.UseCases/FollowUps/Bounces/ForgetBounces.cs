using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps.Bounces;

/// <summary>A person knows that an address is right in spite of what came back, e.g. as a full mailbox was emptied: mail goes there again.</summary>
public sealed class ForgetBounces(OfficeDb db, AuditTrail trail, PracticeClock clock)
{
    /// <summary>How many notices are forgotten, or why not.</summary>
    public async Task<Outcome<int>> Of(StudentId student, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("change what students receive");
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var found = await db.Students.AsNoTracking().SingleOrDefaultAsync(s => s.Id == student && s.ErasedAt == null, stop);
        if (found is null) return new Refusal("student-not-found", "There is no such student.");
        if (found.RecipientOn(await clock.Today(stop)) is not { } recipient) return 0;
        var hash = MailBounce.HashOf(recipient.Address);
        var count = await db.MailBounces.Where(b => b.AddressSha256 == hash).ExecuteDeleteAsync(stop);
        trail.Add(actor, "bounces-forgotten", AuditSubject.Of(student), $"count:{count}");
        await db.SaveChangesAsync(stop);
        await transaction.CommitAsync(stop);
        return count;
    }
}
