using CoachOffice.Data.FollowUps;
using CoachOffice.Domain.FollowUps;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Brings a claimed message to those who know its kind: the plans' law, or its own family of letters.</summary>
public sealed class ClaimedMessage(ReadSendingFacts read, SendMessage send, SendOfficeMessage office)
{
    /// <summary>What came of it.</summary>
    public async Task<SendingResult> Carry(Message message, Sending sending, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(message);
        return message.PlanId is null ? await office.Of(message, sending, stop) : await send.Of(await read.For(message, stop), sending, stop);
    }
}
