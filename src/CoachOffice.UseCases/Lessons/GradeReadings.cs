using CoachOffice.Data;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Lessons;

/// <summary>Grades readings while they are typed, and says what would be worth reading next; keeps nothing.</summary>
public sealed class GradeReadings(OfficeDb db, PlanBooks books, PracticeClock clock)
{
    /// <summary>What is known of them; nothing for an unknown student.</summary>
    public async Task<LiveReadings> Live(StudentId student, Club club, IReadOnlyList<TakenReading> taken, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(taken);
        var found = await db.Students.AsNoTracking().SingleOrDefaultAsync(s => s.Id == student, stop);
        if (found is null) return LiveReadings.None;
        var compiled = await books.Compiled(stop);
        var (book, today) = (compiled.Book, await clock.Today(stop));
        var known = taken.Where(t => book.Find(t.Measure) is not null).ToList();
        var facts = new LessonFacts { AsOf = today, Student = FactsOfStudent.On(found, today), Club = club, Readings = ValuesOf(known, book) };
        return new LiveReadings
        {
            Findings = LessonGrading.Grade(book, facts),
            Apart = ApartSwing.Of(known.Select(t => (t.Measure, new SwingValue(t.Swing, t.Value))), id => book.Find(id)!),
            Next = known.Count > 0 ? Drafter.Draft(compiled, facts).MeasureNext : [],
        };
    }

    private static List<MeasuredValue> ValuesOf(IReadOnlyList<TakenReading> taken, Book book) =>
        [.. taken.GroupBy(t => t.Measure).OrderBy(g => g.Key.Value, StringComparer.Ordinal).Select(g => new MeasuredValue
        {
            Measure = g.Key,
            Value = new Quantity(g.OrderBy(t => t.Swing).Average(t => t.Value.In(book.Find(g.Key)!.Unit).Value), book.Find(g.Key)!.Unit),
            Readings = g.Select(t => t.Swing).Distinct().Count(),
            Instrument = g.Max(t => t.Instrument),
            FrameRate = g.Min(t => t.FrameRate),
        })];
}
