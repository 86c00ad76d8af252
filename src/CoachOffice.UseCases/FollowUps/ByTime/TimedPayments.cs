using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Ledger.Reports;

namespace CoachOffice.UseCases.FollowUps.ByTime;

/// <summary>What is owed for longer than the practice's terms say: one letter for each oldest line, not one a week.</summary>
public sealed class TimedPayments(ReadOverdue overdue, ReadMessageRules rules, PracticeClock clock) : ITimedMessages
{
    /// <inheritdoc/>
    public async Task<IReadOnlyList<DueMessage>> Due(CancellationToken stop)
    {
        var (after, dates, today) = ((await rules.Of(MessageKind.PaymentDue, stop)).Timing, new FollowUpDates(await clock.Zone(stop)), await clock.Today(stop));
        return
        [
            .. from open in await overdue.SinceBefore(today.PlusDays(Ahead.Days - after), stop)
               let day = NodaTime.LocalDate.Max(today, open.PayBy.PlusDays(after))
               select new DueMessage
               {
                   Kind = MessageKind.PaymentDue,
                   StudentId = null,
                   SubjectId = open.Payer.Value,
                   DueAt = dates.NextMorning(NodaTime.Instant.Max(clock.Now, dates.Morning(day))),
                   Reason = $"something is open since {MessageDay.Of(open.OldestOn)} and was to be paid by {MessageDay.Of(open.PayBy)}",
                   Occasion = PaymentLetter.Occasion(open),
               },
        ];
    }
}
