using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Lessons.Sheets;
using CoachOffice.UseCases.Rulebook;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Lessons;

/// <summary>Shows a lesson with its sheet.</summary>
public sealed class LessonPage(OfficeDb db, Rulebooks books, ReadPractice practice, ListSheets sheets)
{
    // So many earlier lessons are searched for a measure's last value.
    private const int LessonsBack = 10;

    private static readonly CompiledQuery<LessonId, Opened> ById = new((db, id) =>
        from lesson in db.Lessons.AsNoTracking()
        join student in db.Students on lesson.StudentId equals student.Id
        where lesson.Id == id
        select new Opened(lesson, student, db.BooksInForce.Select(b => b.Sha256).Single()));

    private static readonly CompiledQuery<LessonId, Reading> ReadingsOf = new((db, id) =>
        db.Readings.AsNoTracking().Where(r => r.LessonId == id && r.WithdrawnAt == null).OrderBy(r => r.Id));

    private static readonly CompiledQuery<LessonId, Take> TakesOf = new((db, id) =>
        db.Takes.AsNoTracking().Where(t => t.LessonId == id));

    private static readonly CompiledQuery<LessonId, DraftedPlan> PlansOf = new((db, id) =>
        db.Plans.Where(p => p.LessonId == id).OrderByDescending(p => p.CreatedAt).ThenByDescending(p => p.Id).Select(p => new DraftedPlan(p.Id, p.Status, p.CreatedAt)));

    private static readonly CompiledQueryOfTwo<StudentId, LessonId, EarlierReading> Earlier = new((db, student, id) =>
        db.Lessons
            .Where(l => l.StudentId == student && db.Lessons.Any(own => own.Id == id && l.Club == own.Club && l.Id != own.Id && l.HeldOn <= own.HeldOn && l.CreatedAt < own.CreatedAt))
            .OrderByDescending(l => l.HeldOn).ThenByDescending(l => l.CreatedAt).Take(LessonsBack)
            .SelectMany(l => l.AllReadings.Where(r => r.WithdrawnAt == null), (l, r) => new EarlierReading(l.Id, l.HeldOn, l.CreatedAt, r.Measure, r.Value)));

    /// <summary>The lesson, or null when there is none.</summary>
    public async Task<LessonView?> Of(LessonId lesson, SheetWish wish, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(wish);
        if (await ById.Rows(db, lesson, stop) is not [var (found, student, inForce)]) return null;
        var book = (await books.For(inForce, stop)).Book;
        var known = (await ReadingsOf.Rows(db, lesson, stop)).Where(r => book.Find(r.Measure) is not null).ToList();
        var facts = new LessonFacts
        {
            AsOf = found.HeldOn,
            Student = FactsOfStudent.On(student, found.HeldOn),
            Club = found.Club,
            Readings = LessonValues.Of(known, id => book.Find(id)!.Unit),
        };
        var units = (await practice.Now(stop))?.Units ?? UnitSystem.Metric;
        var offered = await sheets.For(wish.Actor, stop);
        var chosen = ChosenSheet.Of(wish.Key ?? found.Sheet, offered, known.Select(r => r.Measure).Concat(wish.Also.Where(m => m.Length > 0).Select(MeasureId.From)));
        var sheet = new LessonSheet(book, new GradingContext(book, facts), units, await Earlier.Rows(db, found.StudentId, lesson, stop));
        return Shown(found, student) with
        {
            SheetKey = chosen.Key,
            Sheets = offered,
            Takes = [.. (await TakesOf.Rows(db, lesson, stop)).OrderBy(t => t.Swing).ThenBy(t => t.View)],
            Apart = ApartSwing.Of(known.Select(r => (r.Measure, new SwingValue(r.Swing, new Quantity(r.Value, book.Find(r.Measure)!.Unit)))), id => book.Find(id)!),
            Sheet = sheet.Groups(known, chosen),
            Findings = LessonGrading.Grade(book, facts),
            Plans = await PlansOf.Rows(db, lesson, stop),
        };
    }

    private static LessonView Shown(Lesson found, Student student) => new()
    {
        Id = found.Id,
        Version = found.Version,
        StudentId = student.Id,
        StudentName = student.FullName,
        Hand = student.Hand,
        Heading = new LessonHeading(found.HeldOn, found.Club, found.Kind),
        Observations = found.Observations,
        Notes = found.Notes,
    };

    private sealed record Opened(Lesson Lesson, Student Student, string InForce);
}
