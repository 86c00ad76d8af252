using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Plans;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Lets a message go with the next sweep, whatever the hour. Rest after practice, lesson days and pauses still hold.</summary>
public sealed class SendMessageNow(OfficeDb db, MessageDoor door, PracticeClock clock)
{
    /// <summary>The message's id, or why not.</summary>
    public Task<Outcome<Guid>> Now(Guid message, Actor actor, CancellationToken stop = default) =>
        door.Change(new MessageDeed(message, actor, "message-sent-now", "send messages"), (found, row) => Hurry(found, row, stop), stop);

    private async Task<Refusal?> Hurry(Message message, IQueryable<Message> row, CancellationToken stop)
    {
        if (message.PlanId is { } plan && await db.Plans.AnyAsync(p => p.Id == plan && p.Status == PlanStatus.OnHold, stop)) return new("plan-on-hold", "The plan is paused; nothing of it goes out until you restart it.");
        var now = clock.Now;
        await row.ExecuteUpdateAsync(
            m => m.SetProperty(x => x.State, MessageState.Waiting).SetProperty(x => x.DueAt, now).SetProperty(x => x.AtOnce, true).SetProperty(x => x.Attempts, 0).SetProperty(x => x.LastProblem, (string?)null)
                .SetProperty(x => x.SendingAt, (Instant?)null).SetProperty(x => x.LeaseUntil, (Instant?)null).SetProperty(x => x.ClaimedBy, (string?)null),
            stop);
        return null;
    }
}
