using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Bookings;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps.ByTime;

/// <summary>Reminders of lessons that were booked while the practice sent none, or by an earlier edition of the program. All others were written with their booking.</summary>
public sealed class TimedReminders(OfficeDb db, LessonReminders reminders, PracticeClock clock) : ITimedMessages
{
    /// <inheritdoc/>
    public async Task<IReadOnlyList<DueMessage>> Due(CancellationToken stop)
    {
        var (now, until) = (clock.Now, clock.Now + Duration.FromDays(Ahead.Days));
        var coming = await db.Bookings.AsNoTracking().Include(b => b.Seats).Where(b => b.Starts > now && b.Starts < until && b.Status == BookingStatus.Confirmed).ToListAsync(stop);
        return await reminders.Due(coming, stop);
    }
}
