using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Somebody knows that a message arrived of which the program does not: it counts as sent, at the moment it was on its way.</summary>
public sealed class MessageArrived(MessageDoor door, PracticeClock clock)
{
    /// <summary>The message's id, or why not.</summary>
    public Task<Outcome<Guid>> Say(Guid message, Actor actor, CancellationToken stop = default) =>
        door.Change(
            new MessageDeed(message, actor, "message-arrived", "say that messages arrived"),
            async (found, row) =>
            {
                if (found.State != MessageState.Unknown) return new Refusal("message-known", "Only of a message that may have arrived somebody else has to say so.");
                var at = found.SendingAt ?? clock.Now;
                await row.ExecuteUpdateAsync(m => m.SetProperty(x => x.State, MessageState.Sent).SetProperty(x => x.SentAt, at).SetProperty(x => x.SendingAt, (NodaTime.Instant?)null).SetProperty(x => x.LastProblem, (string?)null), stop);
                return null;
            },
            stop);
}
