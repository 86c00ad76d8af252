using CoachOffice.Data.FollowUps;
using CoachOffice.Domain.FollowUps;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>What decides about claimed messages, by those who know their kind: the plans' law, or their own family of letters.</summary>
public sealed class MessageFacts(ReadSendingFacts read, SendMessage send, SendOfficeMessage office)
{
    private IReadOnlyDictionary<Guid, SendingFacts> _ofPlans = new Dictionary<Guid, SendingFacts>();
    private IReadOnlyDictionary<Guid, OfficeFacts> _others = new Dictionary<Guid, OfficeFacts>();

    /// <summary>Reads them for all, in a few queries.</summary>
    public async Task Read(IReadOnlyList<Message> messages, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(messages);
        _ofPlans = await read.For([.. messages.Where(m => m.PlanId is not null)], stop);
        _others = await office.Facts([.. messages.Where(m => m.PlanId is null)], stop);
    }

    /// <summary>What came of one of those read, or how it goes.</summary>
    public Task<Preparation> Prepare(Message message, Sending sending, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(message);
        return message.PlanId is null ? office.Prepare(_others[message.Id], sending, stop) : send.Prepare(_ofPlans[message.Id], sending, stop);
    }
}
