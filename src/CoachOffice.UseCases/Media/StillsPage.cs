using CoachOffice.Data;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Media;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Media;

/// <summary>Shows the stills of a lesson.</summary>
public sealed class StillsPage(OfficeDb db, MediaConsents consents, MediaSettings settings)
{
    /// <summary>The stills, or null when there is no such lesson.</summary>
    public async Task<StillsView?> Of(LessonId lesson, CancellationToken stop = default)
    {
        if (await db.Lessons.AsNoTracking().SingleOrDefaultAsync(l => l.Id == lesson, stop) is not { } found) return null;
        var student = await db.Students.AsNoTracking().SingleAsync(s => s.Id == found.StudentId, stop);
        var stills = await db.MediaItems.AsNoTracking().Where(m => m.LessonId == lesson && m.Kind == MediaKind.Still).OrderBy(m => m.AddedAt).ThenBy(m => m.Id).ToListAsync(stop);
        var takes = await db.Takes.AsNoTracking().Where(t => t.LessonId == lesson).ToListAsync(stop);
        return new StillsView
        {
            Lesson = lesson,
            Heading = new LessonHeading(found.HeldOn, found.Club, found.Kind),
            Student = student,
            Permission = await consents.For(student, stop),
            Stills = [.. stills.OrderBy(s => takes.Find(t => t.Id == s.TakeId)?.View).ThenBy(s => s.Moment)],
            Takes = stills.Join(takes, s => s.TakeId, t => t.Id, (s, t) => (s.Id, t)).ToDictionary(x => x.Id, x => x.t),
            Used = await db.MediaItems.SumAsync(m => m.Bytes, stop),
            Quota = settings.Quota,
        };
    }
}
