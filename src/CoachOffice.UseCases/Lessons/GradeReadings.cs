using CoachOffice.Data;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Lessons;

/// <summary>Grades readings while they are typed; keeps nothing.</summary>
public sealed class GradeReadings(OfficeDb db, PlanBooks books, PracticeClock clock)
{
    /// <summary>The findings by row of the measure; none for an unknown student.</summary>
    public async Task<IReadOnlyList<Finding>> Live(StudentId student, Club club, IReadOnlyList<TakenReading> taken, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(taken);
        var found = await db.Students.AsNoTracking().SingleOrDefaultAsync(s => s.Id == student, stop);
        if (found is null) return [];
        var book = await books.InForce(stop);
        var today = await clock.Today(stop);
        return LessonGrading.Grade(book, new LessonFacts { AsOf = today, Student = FactsOfStudent.On(found, today), Club = club, Readings = ValuesOf(taken, book) });
    }

    private static List<MeasuredValue> ValuesOf(IReadOnlyList<TakenReading> taken, Book book) =>
        [.. taken.Where(t => book.Find(t.Measure) is not null).GroupBy(t => t.Measure).OrderBy(g => g.Key.Value, StringComparer.Ordinal).Select(g => new MeasuredValue
        {
            Measure = g.Key,
            Value = new Quantity(g.OrderBy(t => t.Swing).Average(t => t.Value.In(book.Find(g.Key)!.Unit).Value), book.Find(g.Key)!.Unit),
            Readings = g.Select(t => t.Swing).Distinct().Count(),
            Instrument = g.Max(t => t.Instrument),
            FrameRate = g.Min(t => t.FrameRate),
        })];
}
