using System.Data.Common;
using CoachOffice.Data;
using CoachOffice.Data.FollowUps;
using CoachOffice.Domain.FollowUps;
using Microsoft.Extensions.Logging;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Brings claimed messages as far as they go without sending: facts of all read together, the law asked about each, their mail written.</summary>
public sealed partial class ClaimedMessages(OfficeDb db, IOutbox outbox, MessageFacts facts, MailDispatch dispatch, ILogger<ClaimedMessages> log)
{
    /// <summary>What became of each, in their order; links of their letters still have to be kept.</summary>
    public async Task<IReadOnlyList<BatchItem>> Prepare(IReadOnlyList<Message> messages, Sending sending, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(messages);
        ArgumentNullException.ThrowIfNull(sending);
        db.ChangeTracker.Clear();
        await facts.Read(messages, stop);
        var items = new List<BatchItem>(messages.Count);
        foreach (var message in messages) items.Add(await One(message, sending with { MessageId = message.Id }, stop));
        return items;
    }

    /// <summary>Keeps the links of the letters written, before any of them is handed over.</summary>
    public async Task Keep(CancellationToken stop)
    {
        await dispatch.KeepLinks(stop);
        db.ChangeTracker.Clear();
    }

    private async Task<BatchItem> One(Message message, Sending sending, CancellationToken stop)
    {
        if (message.Attempts > MailDispatch.MostAttempts) return new BatchItem(message, await outbox.Ask(sending, "gave-up", stop));
        try
        {
            var preparation = await facts.Prepare(message, sending, stop);
            if (preparation is not { Goes: { } departure }) return new BatchItem(message, preparation.Over);
            return await dispatch.Write(departure) is { } mail ? new BatchItem(message, Mail: mail) : new BatchItem(message, await outbox.Ask(sending, "no-sender", stop));
        }
        catch (Exception failure) when (failure is not OperationCanceledException && failure.GetBaseException() is not DbException)
        {
            // One message the program stumbles over does not hold up the others; a person is asked when it goes on like that.
            LogStumbled(log, message.Id, failure);
            return new BatchItem(message, await dispatch.NoteStumble(message, sending, stop));
        }
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "Message {Message} could not be prepared.")]
    private static partial void LogStumbled(ILogger log, Guid message, Exception failure);
}
