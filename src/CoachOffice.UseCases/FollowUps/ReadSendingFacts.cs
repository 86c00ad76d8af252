using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Reads what decides about a claimed message, fresh.</summary>
public sealed class ReadSendingFacts(OfficeDb db, PracticeDays days)
{
    private static readonly Duration Lately = Duration.FromDays(60);

    /// <summary>The facts as they stand now.</summary>
    public async Task<SendingFacts> For(Message message, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(message);
        if (message is not { PlanId: { } planId, StudentId: { } studentId }) throw new ArgumentException("This message belongs to no plan.", nameof(message));
        var plan = await db.Plans.AsNoTracking().Include(p => p.Stages).SingleAsync(p => p.Id == planId, stop);
        var since = days.Now - Lately;
        return new SendingFacts
        {
            Message = message,
            Plan = plan,
            Student = await db.Students.AsNoTracking().SingleAsync(s => s.Id == studentId, stop),
            Practice = await db.Practices.AsNoTracking().SingleAsync(stop),
            Looks = await db.Retests.AsNoTracking().Where(r => r.PlanId == plan.Id && r.Status == RetestStatus.Ready).OrderBy(r => r.DueOn).ThenBy(r => r.Id).ToListAsync(stop),
            Now = days.Now,
            Dates = await days.Dates(stop),
            LastPractice = await days.Last(plan.Id, stop),
            LastNote = await db.CheckIns.Where(c => c.PlanId == plan.Id).OrderByDescending(c => c.At).Select(c => (Instant?)c.At).FirstOrDefaultAsync(stop),
            Taught = await days.Taught(studentId, stop),
            Sent = await db.Messages.Where(m => m.StudentId == studentId && m.State == MessageState.Sent && m.SentAt >= since)
                .Select(m => new SentBefore(m.Kind, m.PlanId, m.SentAt!.Value)).ToListAsync(stop),
        };
    }
}
