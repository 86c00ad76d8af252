using CoachOffice.Data;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Media;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Media;

/// <summary>Shows the clips of a lesson.</summary>
public sealed class ClipsPage(OfficeDb db, MediaConsents consents, MediaSettings settings)
{
    /// <summary>The clips, or null when there is no such lesson.</summary>
    public async Task<ClipsView?> Of(LessonId lesson, CancellationToken stop = default)
    {
        if (await db.Lessons.AsNoTracking().SingleOrDefaultAsync(l => l.Id == lesson, stop) is not { } found) return null;
        var student = await db.Students.AsNoTracking().SingleAsync(s => s.Id == found.StudentId, stop);
        return new ClipsView
        {
            Lesson = lesson,
            Heading = new LessonHeading(found.HeldOn, found.Club, found.Kind),
            Student = student,
            Permission = await consents.For(student, stop),
            Clips = await db.MediaItems.AsNoTracking().Where(m => m.LessonId == lesson && m.Kind == MediaKind.Clip).OrderBy(m => m.AddedAt).ThenBy(m => m.Id).ToListAsync(stop),
            Takes = await db.Takes.AsNoTracking().Where(t => t.LessonId == lesson).ToListAsync(stop),
            Used = await db.MediaItems.SumAsync(m => m.Bytes, stop),
            Quota = settings.Quota,
            Largest = settings.LargestClip,
        };
    }
}
