using CoachOffice.Data;
using CoachOffice.Domain.Media;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Media;

/// <summary>Shows what is recorded of consent to stills and clips of a student.</summary>
public sealed class ConsentPage(OfficeDb db, PracticeClock clock)
{
    /// <summary>The page, or null when there is no such student.</summary>
    public async Task<ConsentView?> Of(StudentId id, CancellationToken stop = default)
    {
        if (await db.Students.AsNoTracking().SingleOrDefaultAsync(s => s.Id == id && s.ErasedAt == null, stop) is not { } student) return null;
        var today = await clock.Today(stop);
        var consents = await db.MediaConsents.AsNoTracking().Where(c => c.StudentId == id).OrderByDescending(c => c.RecordedAt).ThenByDescending(c => c.Id).ToListAsync(stop);
        var people = consents.SelectMany(c => new[] { c.RecordedBy.Value, c.WithdrawnBy?.Value ?? c.RecordedBy.Value }).Distinct().ToList();
        var names = await db.Users.AsNoTracking().Where(u => people.Contains(u.Id)).ToDictionaryAsync(u => u.Id, u => u.DisplayName, stop);
        return new ConsentView
        {
            Student = student,
            IsMinor = student.BirthDate is { } born && Ages.IsMinor(born, today),
            Permission = MediaLaw.On(student, consents.FirstOrDefault(), today),
            Consents = [.. consents.Select(c => new ConsentRow(c, names.GetValueOrDefault(c.RecordedBy.Value, ""), c.WithdrawnBy is { } by ? names.GetValueOrDefault(by.Value, "") : null))],
            Lessons = await Lessons(id, stop),
        };
    }

    private async Task<IReadOnlyList<LessonMedia>> Lessons(StudentId id, CancellationToken stop)
    {
        var counted = await db.MediaItems.Where(m => m.StudentId == id).GroupBy(m => m.LessonId).Select(g => new { Lesson = g.Key, Count = g.Count() }).ToListAsync(stop);
        var lessons = counted.Select(c => c.Lesson).ToList();
        var days = await db.Lessons.Where(l => lessons.Contains(l.Id)).ToDictionaryAsync(l => l.Id, l => l.HeldOn, stop);
        return [.. counted.Select(c => new LessonMedia(c.Lesson, days[c.Lesson], c.Count)).OrderByDescending(l => l.HeldOn)];
    }
}
