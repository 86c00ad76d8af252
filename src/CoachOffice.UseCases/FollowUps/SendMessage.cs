using CoachOffice.Data;
using CoachOffice.Data.FollowUps;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Measuring.Answers;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Asks the law about a claimed message of a plan; what does not go now is noted at once.</summary>
public sealed class SendMessage(OfficeDb db, IOutbox outbox, WriteLetter write)
{
    /// <summary>What came of it, or how it goes.</summary>
    public async Task<Preparation> Prepare(SendingFacts facts, Sending sending, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(sending);
        switch (SendingLaw.Of(facts))
        {
            case SendingVerdict.Never never:
                await outbox.Skip(sending, never.Why, stop);
                return Preparation.Ended(SendingResult.Skipped);
            case SendingVerdict.Later later:
                await PutOff(facts, sending, later.Again, stop);
                return Preparation.Ended(SendingResult.PutOff);
            case SendingVerdict.Ask ask:
                return Preparation.Ended(await outbox.Ask(sending, ask.Problem, stop));
            default:
                return Preparation.Of(Go(facts, stop));
        }
    }

    private Departure Go(SendingFacts facts, CancellationToken stop) =>
        new(facts.Message, facts.Practice, facts.Message.Kind != MessageKind.PlanDelivery, () => write.Of(facts, stop))
        {
            AfterSent = facts.Message.Kind switch
            {
                MessageKind.PracticeNudge => services => services.GetRequiredService<Encouraging>().AfterNote(facts.Plan, facts.Today, facts.Unanswered + 1, CancellationToken.None),
                MessageKind.RetestPrompt => services => services.GetRequiredService<PromptAgain>().After(facts, CancellationToken.None),
                _ => null,
            },
        };

    // The day of the re-test goes with its prompt.
    private async Task PutOff(SendingFacts facts, Sending sending, Instant again, CancellationToken stop)
    {
        if (!await outbox.PutOff(sending, again, stop) || facts.Look is not { } look) return;
        var day = facts.Dates.DayOf(again);
        if (day > look.DueOn) await db.Retests.Where(r => r.Id == look.Id).ExecuteUpdateAsync(r => r.SetProperty(x => x.DueOn, day), stop);
    }
}
