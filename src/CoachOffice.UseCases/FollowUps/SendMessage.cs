using CoachOffice.Data;
using CoachOffice.Data.FollowUps;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Carries one claimed message of a plan to its end: asks the law, writes the letter, hands it over, notes what came of it.</summary>
public sealed class SendMessage(OfficeDb db, IOutbox outbox, WriteLetter write, MailDispatch dispatch, Encouraging encouraging)
{
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

    private Task<SendingResult> Go(SendingFacts facts, Sending sending, CancellationToken stop)
    {
        var departure = new Departure(facts.Message, facts.Practice, facts.Message.Kind != MessageKind.PlanDelivery, () => write.Of(facts, stop))
        {
            AfterSent = () => facts.Message.Kind == MessageKind.PracticeNudge ? encouraging.AfterNote(facts.Plan, facts.Today, facts.Unanswered + 1, CancellationToken.None) : Task.CompletedTask,
        };
        return dispatch.Of(departure, sending, stop);
    }

    // The day of the re-test goes with its prompt.
    private async Task PutOff(SendingFacts facts, Sending sending, Instant again, CancellationToken stop)
    {
        if (!await outbox.PutOff(sending, again, stop) || facts.Look is not { } look) return;
        var day = facts.Dates.DayOf(again);
        if (day > look.DueOn) await db.Retests.Where(r => r.Id == look.Id).ExecuteUpdateAsync(r => r.SetProperty(x => x.DueOn, day), stop);
    }
}
