using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Measuring.Again;

/// <summary>Shows what is to be read again, without what was read.</summary>
public sealed class SecondReadingPage(OfficeDb db, PlanBooks books, ReadPractice practice)
{
    /// <summary>The take and its empty fields, or null when nothing of the kind waits.</summary>
    public async Task<SecondReadingView?> Of(Guid id, CancellationToken stop = default)
    {
        var asked = await db.SecondReadings.AsNoTracking().SingleOrDefaultAsync(s => s.Id == id && s.ReadAt == null, stop);
        if (asked is null) return null;
        var take = await ListSecondReadings.Waits(db).SingleOrDefaultAsync(w => w.Id == id, stop);
        if (take is null) return null;
        var book = await books.InForce(stop);
        var units = (await practice.Now(stop))?.Units ?? UnitSystem.Metric;
        var read = await db.Readings.AsNoTracking().Where(r => r.TakeId == asked.TakeId && r.WithdrawnAt == null).Select(r => new { r.Measure, r.Instrument }).ToListAsync(stop);
        return new SecondReadingView(asked.Version, take, [.. read.Select(r => (Measure: book.Find(r.Measure), r.Instrument)).Where(r => r.Measure is not null).OrderBy(r => r.Measure!.Row)
            .Select(r => new FieldAgain(r.Measure!, ShownUnits.For(r.Measure!.Unit, units), r.Instrument, ReadingEntry.TakesAsRead(r.Measure!)))]);
    }
}
