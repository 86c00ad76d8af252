using System.Globalization;
using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students.Merging;

/// <summary>What keeps two records from becoming one: a student cannot be in two lessons at once that are still to come.</summary>
public sealed class MergeObstacles(OfficeDb db, PracticeClock clock)
{
    private const int Most = 5;

    /// <summary>Each with the way out; empty when there is none.</summary>
    internal async Task<IReadOnlyList<Refusal>> Between(StudentId stays, StudentId goes, CancellationToken stop)
    {
        var now = clock.Now;
        var theirs = db.TakenTimes.Where(t => t.Holder == goes.Value && t.Until > now);
        var both = await theirs.Where(t => db.TakenTimes.Any(o => o.Holder == stays.Value && o.From < t.Until && o.Until > t.From))
            .OrderBy(t => t.From).Select(t => t.From).Take(Most).ToListAsync(stop);
        var zone = await clock.Zone(stop);
        return [.. both.Select(at => new Refusal("booked-twice", string.Create(CultureInfo.InvariantCulture, $"Both records are booked on {at.InZone(zone):d MMMM uuuu, HH:mm}. Cancel one of the two bookings first.")))];
    }
}
