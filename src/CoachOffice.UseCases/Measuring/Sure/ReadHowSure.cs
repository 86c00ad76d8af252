using CoachOffice.Data;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Measuring.Sure;

/// <summary>
/// What the practice knows of its own reading error. Two studies that never mix: a take read twice gives the error of marking, several swings of one lesson give the scatter of a swing.
/// The camera's part stays the rulebook's: no lesson films the same swing with two set-ups.
/// </summary>
public sealed class ReadHowSure(OfficeDb db, PlanBooks books, PracticeClock clock)
{
    // Cameras and habits change: what was read long ago says little of today's error.
    private const int Days = 730;

    /// <summary>Every measure that has a reading error, by row.</summary>
    public async Task<IReadOnlyList<SureMeasure>> Now(CancellationToken stop = default)
    {
        var book = await books.InForce(stop);
        var twice = await Doubles(book, stop);
        var scatters = await Scatters(stop);
        return [.. book.Measures.Select(m => new SureMeasure
        {
            Measure = m,
            Twice = [.. twice.Where(t => t.Double.Measure == m.Id).GroupBy(t => t.Double.Instrument).OrderBy(g => g.Key).Select(g => MarkingStudy.Of(g.Key, [.. g], m.Unit))],
            Swings = [.. scatters.Where(s => s.Measure == m.Id).GroupBy(s => s.Instrument).OrderBy(g => g.Key).Select(g => SwingStudy.Of(g.Key, [.. g]))],
        })];
    }

    private async Task<IReadOnlyList<DoubleRead>> Doubles(Book book, CancellationToken stop)
    {
        var read = await db.SecondReadings.AsNoTracking().Where(s => s.ReadAt != null).OrderBy(s => s.ReadAt).ThenBy(s => s.Id).ToListAsync(stop);
        return [.. read.SelectMany(s => s.Doubles.Where(d => book.Find(d.Measure) is not null).Select(d => new DoubleRead(d, s.IsSameReader)))];
    }

    private async Task<List<LessonScatter>> Scatters(CancellationToken stop)
    {
        var since = (await clock.Today(stop)).PlusDays(-Days);
        return await (from reading in db.Readings
                      join lesson in db.Lessons on reading.LessonId equals lesson.Id
                      where reading.WithdrawnAt == null && lesson.HeldOn >= since
                      group reading.Value by new { reading.LessonId, reading.Measure, reading.Instrument } into swings
                      where swings.Count() > 1
                      select new LessonScatter(swings.Key.Measure, swings.Key.Instrument, swings.Count(), swings.Sum(), swings.Sum(v => v * v))).ToListAsync(stop);
    }
}
