using CoachOffice.Data;
using CoachOffice.Data.FollowUps;
using CoachOffice.Domain.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>The last stretch every mail goes: written, its links kept, handed over, and what came of it noted.</summary>
public sealed class MailDispatch(OfficeDb db, IOutbox outbox, MailDoors doors)
{
    /// <summary>So many attempts, then a person looks.</summary>
    public const int MostAttempts = 5;

    private static readonly Duration[] Waits = [Duration.FromMinutes(2), Duration.FromMinutes(10), Duration.FromHours(1), Duration.FromHours(4)];

    /// <summary>What came of it.</summary>
    public async Task<SendingResult> Of(Departure departure, Sending sending, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(departure);
        ArgumentNullException.ThrowIfNull(sending);
        if (doors.LeavesBySmtp(departure.Practice) && departure.Practice.MailFrom.Length == 0)
        {
            await outbox.MarkFailed(sending, "no-sender", null, stop);
            return SendingResult.NeedsAttention;
        }

        var mail = await departure.Write();
        var minted = db.ChangeTracker.Entries<PrivateLink>().Select(e => e.Entity.Id).ToList();
        await db.SaveChangesAsync(stop);
        if (!await outbox.MarkBegun(sending, stop))
        {
            await Forget(minted, stop);
            return SendingResult.PutOff;
        }

        var handover = await doors.For(departure.Practice).HandOver(mail, stop);
        if (handover.Result is HandoverResult.TryLater or HandoverResult.Refused) await Forget(minted, CancellationToken.None);
        return await Note(departure, sending, handover);
    }

    // What is known now is noted even when the program is being stopped.
    private async Task<SendingResult> Note(Departure departure, Sending sending, Handover handover)
    {
        if (handover.Result == HandoverResult.Taken)
        {
            await using var transaction = await db.Database.BeginTransactionAsync();
            await outbox.MarkSent(sending, CancellationToken.None);
            await departure.AfterSent();
            await db.SaveChangesAsync();
            await transaction.CommitAsync();
            return SendingResult.Sent;
        }

        var attempts = departure.Message.Attempts;
        var mayRepeat = handover.Result == HandoverResult.TryLater || (handover.Result == HandoverResult.Unknown && departure.MayRepeat);
        var again = mayRepeat && attempts < MostAttempts ? sending.Now + Waits[attempts - 1] : (Instant?)null;
        await outbox.MarkFailed(sending, handover.Problem ?? "unknown", again, CancellationToken.None);
        return again is null ? SendingResult.NeedsAttention : handover.IsOfServer ? SendingResult.ServerDown : SendingResult.TriedAgainLater;
    }

    // A link nobody can have received opens nothing.
    private Task<int> Forget(IReadOnlyList<Guid> minted, CancellationToken stop) => db.PrivateLinks.Where(l => minted.Contains(l.Id)).ExecuteDeleteAsync(stop);
}
