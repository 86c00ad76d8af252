using CoachOffice.Data.FollowUps;
using CoachOffice.Domain.FollowUps;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>The last stretch every mail goes: written, looked at once more, handed over, and what came of it noted.</summary>
public sealed class MailDispatch(IOutbox outbox, MailDoors doors, MintedLinks links, UnnotedMail unnoted, IServiceProvider services)
{
    /// <summary>So many attempts, then a person looks.</summary>
    public const int MostAttempts = 5;

    private static readonly Duration[] Waits = [Duration.FromMinutes(2), Duration.FromMinutes(10), Duration.FromHours(1), Duration.FromHours(4)];

    /// <summary>The mail as it leaves, its links in the context, unsaved; null when the practice has no address to send from.</summary>
    public async Task<WrittenMail?> Write(Departure departure)
    {
        ArgumentNullException.ThrowIfNull(departure);
        if (departure.Door is null && doors.LeavesBySmtp(departure.Practice) && departure.Practice.MailFrom.Length == 0) return null;
        try
        {
            var mail = await departure.Write();
            if (departure.Door is null) doors.Seal(departure.Practice, mail);
            return new WrittenMail(departure, mail, links.Latest());
        }
        catch
        {
            links.DropLatest();
            throw;
        }
    }

    /// <summary>Hands it over unless it is not wanted any more, and notes what came of it.</summary>
    public async Task<SendingResult> HandOver(WrittenMail written, Sending sending, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(written);
        ArgumentNullException.ThrowIfNull(sending);
        var departure = written.Departure;

        // What may not be repeated by guess has to be known to have begun; for the others lease and Message-ID do.
        var wanted = departure.MayRepeat ? await outbox.IsStillWanted(sending, CancellationToken.None) : await outbox.MarkBegun(sending, CancellationToken.None);
        if (!wanted)
        {
            await Forget(written.Links);
            return SendingResult.PutOff;
        }

        var handover = await (departure.Door ?? doors.For(departure.Practice)).HandOver(written.Mail, stop);
        if (handover.Result != HandoverResult.Taken) return await NoteTrouble(written, sending, handover);
        await unnoted.Note(new SentMail(sending, departure.AfterSent), services);
        return SendingResult.Sent;
    }

    /// <summary>The program stumbled over it: tried again later, and given up after some times.</summary>
    public async Task<SendingResult> NoteStumble(Message message, Sending sending, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(message);
        ArgumentNullException.ThrowIfNull(sending);
        var again = Again(message, sending);
        await outbox.MarkFailed(sending, "gave-up", again, stop);
        return again is null ? SendingResult.NeedsAttention : SendingResult.TriedAgainLater;
    }

    /// <summary>Keeps the links of what was written.</summary>
    public Task KeepLinks(CancellationToken stop) => links.Save(stop);

    /// <summary>Links of what will not be handed over.</summary>
    public Task Forget(IReadOnlyList<Guid> minted) => links.Forget(minted, CancellationToken.None);

    // What is known now is noted even when the program is being stopped.
    private async Task<SendingResult> NoteTrouble(WrittenMail written, Sending sending, Handover handover)
    {
        if (handover.Result != HandoverResult.Unknown) await Forget(written.Links);
        if (handover.Result == HandoverResult.NotNow)
        {
            await outbox.GiveBack([sending.MessageId], sending.Owner, CancellationToken.None);
            return SendingResult.RateReached;
        }

        var mayRepeat = handover.Result == HandoverResult.TryLater || (handover.Result == HandoverResult.Unknown && written.Departure.MayRepeat);
        if (!mayRepeat || Again(written.Departure.Message, sending) is not { } again) return await outbox.Ask(sending, handover.Problem ?? "unknown", CancellationToken.None);
        await outbox.MarkFailed(sending, handover.Problem ?? "unknown", again, CancellationToken.None);
        return handover.IsOfServer ? SendingResult.ServerDown : SendingResult.TriedAgainLater;
    }

    private static Instant? Again(Message message, Sending sending) => message.Attempts < MostAttempts ? sending.Now + Waits[message.Attempts - 1] : null;
}
