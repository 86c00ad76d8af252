using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Takes a message out: it will not be sent.</summary>
public sealed class SkipMessage(MessageDoor door)
{
    private const int Longest = 200;

    /// <summary>The message's id, or why not.</summary>
    public async Task<Outcome<Guid>> Now(Guid message, string reason, Actor actor, CancellationToken stop = default)
    {
        if (string.IsNullOrWhiteSpace(reason) || reason.Length > Longest) return new Refusal("reason-needed", "Give a reason of up to 200 characters.", "Reason");
        return await door.Change(
            new MessageDeed(message, actor, "message-skipped", "skip messages"),
            async (_, row) =>
            {
                await row.ExecuteUpdateAsync(m => m.SetProperty(x => x.State, MessageState.Skipped).SetProperty(x => x.LastProblem, reason.Trim()), stop);
                return null;
            },
            stop);
    }
}
