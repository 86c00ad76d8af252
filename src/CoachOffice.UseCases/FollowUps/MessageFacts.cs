using CoachOffice.Data.FollowUps;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>What decides about claimed messages, by those who know their kind: the plans' law, or their own family of letters.</summary>
public sealed class MessageFacts(ReadSendingFacts read, SendMessage send, SendOfficeMessage office, ReadMessageRules rules, IOutbox outbox)
{
    private IReadOnlyDictionary<Guid, SendingFacts> _ofPlans = new Dictionary<Guid, SendingFacts>();
    private Dictionary<Guid, OfficeFacts> _others = [];
    private readonly HashSet<StudentId> _encouraged = [];

    /// <summary>Reads them for all, in a few queries.</summary>
    public async Task Read(IReadOnlyList<Message> messages, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(messages);
        await rules.Again(stop);
        _encouraged.Clear();
        _ofPlans = await read.For([.. messages.Where(m => m.PlanId is not null)], stop);
        var words = await rules.WordsOf(messages, stop);
        _others = (await office.Facts([.. messages.Where(m => m.PlanId is null)], stop)).ToDictionary(f => f.Key, f => f.Value with { Words = words[f.Key] });
    }

    /// <summary>What came of one of those read, or how it goes.</summary>
    public async Task<Preparation> Prepare(Message message, Sending sending, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(message);
        if (!(await rules.Of(message.Kind, stop)).IsOn) return await TurnedOff(sending, stop);
        if (IsSecondOfTheDay(message)) return await Tomorrow(_ofPlans[message.Id], sending, stop);
        return message.PlanId is null ? await office.Prepare(_others[message.Id], sending, stop) : await send.Prepare(_ofPlans[message.Id], sending, stop);
    }

    // Facts of a batch are read together: two encouragements of one student in it do not know of each other.
    private bool IsSecondOfTheDay(Message message) => message is { PlanId: not null, AtOnce: false, StudentId: { } student } && MessageTraits.IsEncouragement(message.Kind) && !_encouraged.Add(student);

    private async Task<Preparation> Tomorrow(SendingFacts facts, Sending sending, CancellationToken stop)
    {
        await outbox.PutOff(sending, facts.Dates.Morning(facts.Today.PlusDays(1)), stop);
        return Preparation.Ended(SendingResult.PutOff);
    }

    // The practice turned its kind off after it was written.
    private async Task<Preparation> TurnedOff(Sending sending, CancellationToken stop)
    {
        await outbox.Skip(sending, "kind-off", stop);
        return Preparation.Ended(SendingResult.Skipped);
    }
}
