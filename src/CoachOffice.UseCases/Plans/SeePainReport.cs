using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>Notes that a coach has dealt with a pain report. The plan stays paused until the coach restarts it.</summary>
public sealed class SeePainReport(OfficeDb db, AuditTrail trail, PracticeClock clock)
{
    /// <summary>The plan's id, or why not.</summary>
    public async Task<Outcome<PlanId>> Done(Guid checkIn, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach) return NotAllowed.To("deal with pain reports");
        var report = await db.CheckIns.AsNoTracking().SingleOrDefaultAsync(c => c.Id == checkIn && c.Pain, stop);
        if (report is null) return new Refusal("pain-report-not-found", "There is no such pain report.");
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var now = clock.Now;
        var marked = await db.CheckIns.Where(c => c.Id == checkIn && c.SeenAt == null).ExecuteUpdateAsync(c => c.SetProperty(x => x.SeenAt, (Instant?)now), stop);
        if (marked > 0) trail.Add(actor, "pain-report-seen", AuditSubject.Of(report.PlanId), $"check-in:{checkIn:N}");
        await db.SaveChangesAsync(stop);
        await transaction.CommitAsync(stop);
        return report.PlanId;
    }
}
