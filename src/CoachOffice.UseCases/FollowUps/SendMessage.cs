using CoachOffice.Data;
using CoachOffice.Data.FollowUps;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Carries one claimed message to its end: asks the law, writes the letter, hands it over, notes what came of it.</summary>
public sealed class SendMessage(OfficeDb db, IOutbox outbox, WriteLetter write, MailDoors doors, Encouraging encouraging)
{
    /// <summary>So many attempts, then a person looks.</summary>
    public const int MostAttempts = 5;

    private static readonly Duration[] Waits = [Duration.FromMinutes(2), Duration.FromMinutes(10), Duration.FromHours(1), Duration.FromHours(4)];

    /// <summary>What came of it.</summary>
    public async Task<SendingResult> Of(SendingFacts facts, Sending sending, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(sending);
        db.ChangeTracker.Clear();
        switch (SendingLaw.Of(facts))
        {
            case SendingVerdict.Never never:
                await outbox.Skip(sending, never.Why, stop);
                return SendingResult.Skipped;
            case SendingVerdict.Later later:
                await PutOff(facts, sending, later.Again, stop);
                return SendingResult.PutOff;
            case SendingVerdict.Ask ask:
                await outbox.MarkFailed(sending, ask.Problem, null, stop);
                return SendingResult.NeedsAttention;
            default:
                return await Go(facts, sending, stop);
        }
    }

    private async Task<SendingResult> Go(SendingFacts facts, Sending sending, CancellationToken stop)
    {
        if (doors.LeavesBySmtp(facts.Practice) && facts.Practice.MailFrom.Length == 0)
        {
            await outbox.MarkFailed(sending, "no-sender", null, stop);
            return SendingResult.NeedsAttention;
        }

        var mail = await write.Of(facts, stop);
        var minted = db.ChangeTracker.Entries<PrivateLink>().Select(e => e.Entity.Id).ToList();
        await db.SaveChangesAsync(stop);
        if (!await outbox.MarkBegun(sending, stop))
        {
            await Forget(minted, stop);
            return SendingResult.PutOff;
        }

        var handover = await doors.For(facts.Practice).HandOver(mail, stop);
        if (handover.Result is HandoverResult.TryLater or HandoverResult.Refused) await Forget(minted, CancellationToken.None);
        return await Note(facts, sending, handover);
    }

    // What is known now is noted even when the program is being stopped.
    private async Task<SendingResult> Note(SendingFacts facts, Sending sending, Handover handover)
    {
        if (handover.Result == HandoverResult.Taken)
        {
            await using var transaction = await db.Database.BeginTransactionAsync();
            await outbox.MarkSent(sending, CancellationToken.None);
            if (facts.Message.Kind == MessageKind.PracticeNudge) await encouraging.AfterNote(facts.Plan, facts.Today, facts.Unanswered + 1, CancellationToken.None);
            await db.SaveChangesAsync();
            await transaction.CommitAsync();
            return SendingResult.Sent;
        }

        var mayRepeat = handover.Result == HandoverResult.TryLater || (handover.Result == HandoverResult.Unknown && facts.Message.Kind != MessageKind.PlanDelivery);
        var again = mayRepeat && facts.Message.Attempts < MostAttempts ? sending.Now + Waits[facts.Message.Attempts - 1] : (Instant?)null;
        await outbox.MarkFailed(sending, handover.Problem ?? "unknown", again, CancellationToken.None);
        return again is null ? SendingResult.NeedsAttention : handover.IsOfServer ? SendingResult.ServerDown : SendingResult.TriedAgainLater;
    }

    // The day of the re-test goes with its prompt.
    private async Task PutOff(SendingFacts facts, Sending sending, Instant again, CancellationToken stop)
    {
        if (!await outbox.PutOff(sending, again, stop) || facts.Look is not { } look) return;
        var day = facts.Dates.DayOf(again);
        if (day > look.DueOn) await db.Retests.Where(r => r.Id == look.Id).ExecuteUpdateAsync(r => r.SetProperty(x => x.DueOn, day), stop);
    }

    // A link nobody can have received opens nothing.
    private Task<int> Forget(IReadOnlyList<Guid> minted, CancellationToken stop) => db.PrivateLinks.Where(l => minted.Contains(l.Id)).ExecuteDeleteAsync(stop);
}
