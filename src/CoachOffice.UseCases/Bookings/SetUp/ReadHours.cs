using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>A coach's hours as the set-up shows them: what holds now or later, and what is outside.</summary>
public sealed class ReadHours(OfficeDb db, PracticeClock clock, OutsideHours outside)
{
    /// <summary>Of one coach, with the closed times of the practice.</summary>
    public async Task<HoursView> Of(AccountId coach, CancellationToken stop = default)
    {
        var (now, today) = (clock.Now, await clock.Today(stop));
        var weekly = await db.WeeklyHours.AsNoTracking().Where(h => h.CoachId == coach && (h.ValidUntil == null || h.ValidUntil >= today)).ToListAsync(stop);
        var exceptions = await db.HoursExceptions.AsNoTracking().Where(e => e.Until > now && (e.CoachId == null || e.CoachId == coach)).ToListAsync(stop);
        return new HoursView(
            [.. weekly.OrderBy(h => h.Day).ThenBy(h => h.From).ThenBy(h => h.ValidFrom).ThenBy(h => h.Id)],
            [.. exceptions.OrderBy(e => e.From).ThenBy(e => e.Id)],
            await outside.Of(coach, stop));
    }
}
