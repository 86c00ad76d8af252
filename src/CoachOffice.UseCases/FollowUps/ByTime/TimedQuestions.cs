using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.UseCases.FollowUps.ByTime;

/// <summary>The week's question of plans that run: one at a time, for adults, while no two encouragements are unanswered.</summary>
public sealed class TimedQuestions(OfficeDb db, ReadMessageRules rules, PracticeDays days) : ITimedMessages
{
    private static readonly Duration Lately = Duration.FromDays(60);

    /// <inheritdoc/>
    public async Task<IReadOnlyList<DueMessage>> Due(CancellationToken stop)
    {
        var (every, dates, today) = ((await rules.Of(MessageKind.WeeklyCheckIn, stop)).Timing, await days.Dates(stop), await days.Today(stop));
        var running = await (
            from plan in db.Plans
            join student in db.Students on plan.StudentId equals student.Id
            where plan.Status == PlanStatus.Active && plan.ApprovedAt != null && student.ArchivedAt == null && student.ErasedAt == null && student.MessagesStoppedAt == null
            select new { plan.Id, plan.StudentId, plan.ApprovedAt, student.BirthDate }).ToListAsync(stop);
        var silent = await Silent(stop);
        return
        [
            .. from plan in running
               let day = Next(dates.DayOf(plan.ApprovedAt!.Value), every, today)
               where !silent.Contains(plan.Id) && !(plan.BirthDate is { } born && Ages.IsMinor(born, day))
               select Question(plan.Id, plan.StudentId, day, dates),
        ];
    }

    /// <summary>The first day from today on that lies a whole number of periods after a plan began, never the day itself.</summary>
    internal static LocalDate Next(LocalDate began, int every, LocalDate today)
    {
        var passed = Math.Max(0, Period.DaysBetween(began, today));
        return began.PlusDays(Math.Max(1, (passed + every - 1) / every) * every);
    }

    private static DueMessage Question(PlanId plan, StudentId student, LocalDate on, FollowUpDates dates) => new()
    {
        Kind = MessageKind.WeeklyCheckIn,
        StudentId = student,
        PlanId = plan,
        DueAt = dates.Morning(on),
        Reason = "the plan runs, and the week's question is due; it is left out when a note came in the three days before",
        Occasion = LocalDatePattern.Iso.Format(on),
    };

    private async Task<HashSet<PlanId>> Silent(CancellationToken stop)
    {
        var since = days.Now - Lately;
        var sent = await db.Messages.Where(m => m.PlanId != null && m.State == MessageState.Sent && m.SentAt >= since && (m.Kind == MessageKind.PracticeNudge || m.Kind == MessageKind.WeeklyCheckIn))
            .Select(m => new { Plan = m.PlanId!.Value, At = m.SentAt!.Value }).ToListAsync(stop);
        var plans = sent.Select(s => s.Plan).Distinct().ToList();
        var last = await db.CheckIns.Where(c => plans.Contains(c.PlanId)).GroupBy(c => c.PlanId).Select(g => new { g.Key, At = g.Max(c => c.At) }).ToDictionaryAsync(g => g.Key, g => g.At, stop);
        return [.. sent.Where(s => !last.TryGetValue(s.Plan, out var at) || s.At > at).GroupBy(s => s.Plan).Where(g => g.Count() >= Encouragement.MostUnanswered).Select(g => g.Key)];
    }
}
