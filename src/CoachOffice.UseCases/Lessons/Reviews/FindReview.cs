using CoachOffice.Data;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Media;
using CoachOffice.UseCases.Media;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Lessons.Reviews;

/// <summary>The remote review a lesson answers, if it answers one.</summary>
public sealed class FindReview(OfficeDb db, MediaConsents consents)
{
    /// <summary>With its clips, or null.</summary>
    public async Task<ReviewBeside?> Of(LessonId lesson, CancellationToken stop = default)
    {
        if (await db.RemoteReviews.AsNoTracking().FirstOrDefaultAsync(r => r.LessonId == lesson, stop) is not { } review) return null;
        var student = await db.Students.AsNoTracking().SingleAsync(s => s.Id == review.StudentId, stop);
        if (await consents.For(student, stop) != MediaPermission.Given) return new ReviewBeside(review, []);
        return new ReviewBeside(review, await db.MediaItems.Where(m => m.LessonId == lesson && m.Kind == MediaKind.Clip).OrderBy(m => m.AddedAt).ThenBy(m => m.Id).Select(m => m.Id).ToListAsync(stop));
    }
}
