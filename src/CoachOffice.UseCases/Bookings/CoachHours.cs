using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>When coaches are at work, from what is kept about their hours.</summary>
public sealed class CoachHours(OfficeDb db, PracticeClock clock)
{
    /// <summary>Open times of some coaches on some days, coach by coach in order of time.</summary>
    public async Task<IReadOnlyList<OpenTime>> Of(IReadOnlyCollection<AccountId> coaches, DateInterval days, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(coaches);
        ArgumentNullException.ThrowIfNull(days);
        var zone = await clock.Zone(stop);
        var asked = coaches.ToList();
        var weekly = await db.WeeklyHours.AsNoTracking().Where(h => asked.Contains(h.CoachId)).ToListAsync(stop);

        // A day more on either side: the local time counts, and the zone may have been changed since the instants were kept.
        var (from, until) = (Midnight(days.Start.PlusDays(-1), zone), Midnight(days.End.PlusDays(2), zone));
        var exceptions = await db.HoursExceptions.AsNoTracking().Where(e => e.Until > from && e.From < until).ToListAsync(stop);
        var book = new HoursBook(weekly, exceptions);
        return [.. asked.SelectMany(coach => OpenTimes.Of(coach, book, days, zone))];
    }

    private static Instant Midnight(LocalDate day, DateTimeZone zone) => LocalTimes.At(day.AtMidnight(), zone);
}
