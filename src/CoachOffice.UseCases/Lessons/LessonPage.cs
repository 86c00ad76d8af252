using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Lessons;

/// <summary>Shows a lesson with its sheet.</summary>
public sealed class LessonPage(OfficeDb db, PlanBooks books, ReadPractice practice)
{
    // So many earlier lessons are searched for a measure's last value.
    private const int LessonsBack = 10;

    /// <summary>The lesson, or null when there is none.</summary>
    public async Task<LessonView?> Of(LessonId lesson, CancellationToken stop = default)
    {
        var found = await db.Lessons.AsNoTracking().Include(l => l.AllReadings).SingleOrDefaultAsync(l => l.Id == lesson, stop);
        if (found is null) return null;
        var student = await db.Students.AsNoTracking().SingleAsync(s => s.Id == found.StudentId, stop);
        var book = await books.InForce(stop);
        var known = found.Readings.Where(r => book.Find(r.Measure) is not null).ToList();
        var facts = new LessonFacts
        {
            AsOf = found.HeldOn,
            Student = FactsOfStudent.On(student, found.HeldOn),
            Club = found.Club,
            Readings = LessonValues.Of(known, id => book.Find(id)!.Unit),
        };
        var units = (await practice.Now(stop))?.Units ?? UnitSystem.Metric;
        var sheet = new LessonSheet(book, new GradingContext(book, facts), units, await Earlier(found, stop));
        return new LessonView
        {
            Id = found.Id,
            Version = found.Version,
            StudentId = student.Id,
            StudentName = student.FullName,
            Heading = new LessonHeading(found.HeldOn, found.Club, found.Kind),
            Observations = found.Observations,
            Notes = found.Notes,
            Sheet = sheet.Groups(known),
            Findings = LessonGrading.Grade(book, facts),
            Plans = await db.Plans.Where(p => p.LessonId == lesson).OrderByDescending(p => p.CreatedAt).ThenByDescending(p => p.Id)
                .Select(p => new DraftedPlan(p.Id, p.Status, p.CreatedAt)).ToListAsync(stop),
        };
    }

    private async Task<IReadOnlyList<Lesson>> Earlier(Lesson lesson, CancellationToken stop) =>
        await db.Lessons.AsNoTracking().Include(l => l.AllReadings)
            .Where(l => l.StudentId == lesson.StudentId && l.Club == lesson.Club && l.Id != lesson.Id && l.HeldOn <= lesson.HeldOn && l.CreatedAt < lesson.CreatedAt)
            .OrderByDescending(l => l.HeldOn).ThenByDescending(l => l.CreatedAt).Take(LessonsBack).ToListAsync(stop);
}
