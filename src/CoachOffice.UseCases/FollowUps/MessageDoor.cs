using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>What every deed of a person on one message does alike: right, found, not just being sent, an audit row.</summary>
public sealed class MessageDoor(OfficeDb db, AuditTrail trail, PracticeClock clock)
{
    /// <summary>Runs the change as one conditional statement, so that a message already on its way stays as it is.</summary>
    public async Task<Outcome<Guid>> Change(MessageDeed deed, Func<Message, IQueryable<Message>, Task<Refusal?>> change, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(deed);
        ArgumentNullException.ThrowIfNull(change);
        if (!deed.Actor.MayTeach) return NotAllowed.To(deed.Doing);
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var message = await db.Messages.AsNoTracking().SingleOrDefaultAsync(m => m.Id == deed.Message, stop);
        if (message is null) return new Refusal("message-not-found", "There is no such message.");
        if (message.State is MessageState.Sent or MessageState.Skipped) return new Refusal("message-over", $"This message is {Terms.Of(message.State)} already.");
        if (message.LeaseUntil > clock.Now) return new Refusal("message-leaving", "This message is being sent at this moment; look again in a minute.");
        if (await change(message, Free(message.Id, clock.Now)) is { } against) return against;
        trail.Add(deed.Actor, deed.Action, AuditSubject.Message(message.Id));
        await db.SaveChangesAsync(stop);
        await transaction.CommitAsync(stop);
        return message.Id;
    }

    private IQueryable<Message> Free(Guid id, Instant now) =>
        db.Messages.Where(m => m.Id == id && m.State != MessageState.Sent && m.State != MessageState.Skipped && (m.LeaseUntil == null || m.LeaseUntil <= now));
}

/// <summary>One deed of a person on one message.</summary>
/// <param name="Message">Which.</param>
/// <param name="Actor">Who.</param>
/// <param name="Action">The audit row's code.</param>
/// <param name="Doing">As a refusal says it.</param>
public sealed record MessageDeed(Guid Message, Actor Actor, string Action, string Doing);
