using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Lessons.Reviews;
using CoachOffice.Domain.Media;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Lessons.Reviews;

/// <summary>Makes a lesson record of a remote review: its club, its clips, and beside them what the student said. Opened again it is the same record.</summary>
public sealed class OpenReview(OfficeDb db, ReviewDoor door, PracticeClock clock)
{
    /// <summary>The lesson, or why not.</summary>
    public async Task<Outcome<LessonId>> For(ReviewId id, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach || actor.Account is not { } coach) return NotAllowed.To("answer remote reviews");
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var review = await db.RemoteReviews.Include(r => r.Clips).SingleOrDefaultAsync(r => r.Id == id, stop);
        if (review is null) return ReviewRefusals.NotFound;
        if (review.LessonId is { } there) return there;
        if (!review.IsOpen) return ReviewRefusals.Over;
        var lesson = Lesson.Start(LessonId.From(door.NewId()), review.StudentId, coach, new LessonHeading(await clock.Today(stop), review.Club), door.Now);
        lesson.ReadBy(await db.Lessons.Where(l => l.CoachId == coach).OrderByDescending(l => l.CreatedAt).ThenByDescending(l => l.Id).Select(l => l.Sheet).FirstOrDefaultAsync(stop) ?? "");
        db.Lessons.Add(lesson);
        foreach (var clip in review.Clips.OrderBy(c => c.AddedAt).ThenBy(c => c.Id))
            db.MediaItems.Add(MediaItem.Clip(MediaId.From(door.NewId()), lesson, new KeptContent(clip.Sha256, clip.Bytes, clip.Format), coach, door.Now));
        // From now on the lesson names them.
        db.ReviewClips.RemoveRange(review.Clips);
        review.OpenAs(lesson.Id, coach);
        door.Note(actor, "review-opened", id);
        if (await db.TrySave(stop) != Saved.Yes) return ReviewRefusals.Busy;
        await transaction.CommitAsync(stop);
        return lesson.Id;
    }
}
