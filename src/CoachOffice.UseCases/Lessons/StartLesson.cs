using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Lessons;

/// <summary>Opens a lesson record.</summary>
public sealed class StartLesson(OfficeDb db, AuditTrail trail, PracticeClock clock, INewIds ids)
{
    /// <summary>The new record's id, or why not.</summary>
    public async Task<Outcome<LessonId>> For(StudentId student, LessonHeading heading, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(heading);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach || actor.Account is not { } coach) return NotAllowed.To("record lessons");
        var found = await db.Students.AsNoTracking().SingleOrDefaultAsync(s => s.Id == student, stop);
        if (found is null) return new Refusal("student-not-found", "There is no such student.");
        if (found.ArchivedAt is not null) return new Refusal("student-archived", $"{found.FullName} is archived; restore the record first.");
        if (HeadingCheck.Of(heading, await clock.Today(stop)) is { } wrong) return wrong;
        var lesson = Lesson.Start(LessonId.From(ids.Next()), student, coach, heading, clock.Now);
        lesson.ReadBy(await db.Lessons.Where(l => l.CoachId == coach).OrderByDescending(l => l.CreatedAt).ThenByDescending(l => l.Id).Select(l => l.Sheet).FirstOrDefaultAsync(stop) ?? "");
        db.Lessons.Add(lesson);
        trail.Add(actor, "lesson-started", AuditSubject.Of(lesson.Id));
        await db.SaveChangesAsync(stop);
        return lesson.Id;
    }
}
