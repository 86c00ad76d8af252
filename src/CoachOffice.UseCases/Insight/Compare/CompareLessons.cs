using CoachOffice.Data;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Insight.Compare;

/// <summary>Holds two lessons of a student side by side: what was read, and which changes are more than reading error.</summary>
public sealed class CompareLessons(OfficeDb db, PlanBooks books)
{
    // Ten years of weekly lessons.
    private const int Most = 500;

    /// <summary>Two lessons; without a choice the last and the one before it with the same club, lessons before re-tests. Null when there is no such student or no such lesson of theirs.</summary>
    public async Task<LessonsSideBySide?> Of(StudentId id, LessonId? earlier, LessonId? later, CancellationToken stop = default)
    {
        if (await db.Students.AsNoTracking().SingleOrDefaultAsync(s => s.Id == id, stop) is not { } student) return null;
        var offered = await db.Lessons.Where(l => l.StudentId == id && l.AllReadings.Any(r => r.WithdrawnAt == null))
            .OrderByDescending(l => l.HeldOn).ThenByDescending(l => l.CreatedAt).Take(Most).Select(l => new OfferedLesson(l.Id, l.HeldOn, l.Club, l.Kind)).ToListAsync(stop);
        var side = new LessonsSideBySide { StudentName = student.FullName, Offered = offered };
        if (offered.Count < 2 && earlier is null && later is null) return side;
        var second = later is null ? Newest(offered, null) : offered.Find(l => l.Id == later);
        var first = earlier is null ? Newest([.. offered.Where(l => l.Id != second?.Id)], second?.Club) : offered.Find(l => l.Id == earlier);
        if (first is null || second is null) return null;
        if (earlier is null && offered.IndexOf(first) < offered.IndexOf(second)) (first, second) = (second, first);
        var book = await books.InForce(stop);
        var (before, after) = (await Findings(first.Id, student, book, stop), await Findings(second.Id, student, book, stop));
        return side with { Earlier = first, Later = second, Rows = [.. Rows(before, after)] };
    }

    // A re-test reads one or two measures: a lesson says more, and the same club more than another.
    private static OfferedLesson? Newest(IReadOnlyList<OfferedLesson> offered, Club? club) =>
        offered.OrderBy(l => club is not null && l.Club != club).ThenBy(l => l.Kind != LessonKind.Lesson).FirstOrDefault();

    private static IEnumerable<ComparedMeasure> Rows(IReadOnlyList<Finding> before, IReadOnlyList<Finding> after) =>
        from measure in before.Concat(after).Select(f => f.Measure).DistinctBy(m => m.Id).OrderBy(m => m.View).ThenBy(m => m.Row)
        select new ComparedMeasure(measure, before.FirstOrDefault(f => f.Measure.Id == measure.Id), after.FirstOrDefault(f => f.Measure.Id == measure.Id));

    private async Task<IReadOnlyList<Finding>> Findings(LessonId id, Student student, Book book, CancellationToken stop)
    {
        var lesson = await db.Lessons.AsNoTracking().Include(l => l.AllReadings).SingleAsync(l => l.Id == id, stop);
        return LessonGrading.Grade(book, new LessonFacts
        {
            AsOf = lesson.HeldOn,
            Student = FactsOfStudent.On(student, lesson.HeldOn),
            Club = lesson.Club,
            Readings = LessonValues.Of(lesson.Readings.Where(r => book.Find(r.Measure) is not null), m => book.Find(m)!.Unit),
        });
    }
}
