using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Safekeeping;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Watching;

/// <summary>Looks how the office stands, for whoever watches it from outside.</summary>
public sealed class ReadOffice(OfficeDb db, IClock clock, ReadBackups backups, OfficeMeter meter)
{
    /// <summary>Looks once and gives it to the gauges.</summary>
    public async Task<OfficeReading> Now(CancellationToken stop)
    {
        var now = clock.GetCurrentInstant();
        var due = db.Messages.Where(m => m.State == MessageState.Waiting && m.DueAt <= now);
        var oldest = await due.OrderBy(m => m.DueAt).Select(m => (Instant?)m.DueAt).FirstOrDefaultAsync(stop);
        var reading = new OfficeReading(
            await due.CountAsync(stop),
            oldest is { } at ? (now - at).TotalSeconds : 0,
            await db.Messages.CountAsync(m => m.State == MessageState.Unknown, stop),
            await db.Messages.CountAsync(m => m.State == MessageState.NeedsAttention, stop),
            (await backups.Age(stop))?.TotalSeconds);
        meter.Stands(reading);
        return reading;
    }
}
