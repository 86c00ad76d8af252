using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>A coach says yes to messages that wait for it: they go when they are due, or with the next sweep when that is over.</summary>
public sealed class ApproveMessages(OfficeDb db, MessageDoor door, AuditTrail trail)
{
    /// <summary>One; its id, or why not.</summary>
    public Task<Outcome<Guid>> One(Guid message, Actor actor, CancellationToken stop = default) =>
        door.Change(new MessageDeed(message, actor, "message-approved", "approve messages"), (found, row) => Approve(found, row, stop), stop);

    /// <summary>All that wait for it now, of one kind or of every; how many that were. Those of paused plans stay.</summary>
    public async Task<Outcome<int>> All(MessageKind? kind, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach) return NotAllowed.To("approve messages");
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var ids = await db.Messages.Where(m => m.State == MessageState.AwaitsApproval && (kind == null || m.Kind == kind)
            && !db.Plans.Any(p => p.Id == m.PlanId && p.Status == PlanStatus.OnHold)).Select(m => m.Id).ToListAsync(stop);
        var approved = 0;
        foreach (var some in ids.Chunk(400))
        {
            approved += await db.Messages.Where(m => some.Contains(m.Id) && m.State == MessageState.AwaitsApproval).ExecuteUpdateAsync(m => m.SetProperty(x => x.State, MessageState.Waiting), stop);
            foreach (var id in some) trail.Add(actor, "message-approved", AuditSubject.Message(id));
        }

        await db.SaveChangesAsync(stop);
        await transaction.CommitAsync(stop);
        return approved;
    }

    private async Task<Refusal?> Approve(Message message, IQueryable<Message> row, CancellationToken stop)
    {
        if (message.State != MessageState.AwaitsApproval) return new("message-approved", "This message does not wait for a yes any more.");
        if (message.PlanId is { } plan && await db.Plans.AnyAsync(p => p.Id == plan && p.Status == PlanStatus.OnHold, stop)) return new("plan-on-hold", "The plan is paused; nothing of it goes out until you restart it.");
        await row.ExecuteUpdateAsync(m => m.SetProperty(x => x.State, MessageState.Waiting), stop);
        return null;
    }
}
