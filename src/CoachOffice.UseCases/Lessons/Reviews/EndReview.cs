using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Lessons.Reviews;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Media;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Lessons.Reviews;

/// <summary>Ends a remote review: answered in another way than by a plan, or taken back.</summary>
public sealed class EndReview(OfficeDb db, ReviewDoor door, ReviewLetters letters, ReviewMoney money, MediaFiles files)
{
    /// <summary>The coach says it is answered.</summary>
    public Task<Outcome<ReviewId>> AsAnswered(ReviewId id, Actor actor, CancellationToken stop = default) => End(id, actor, answered: true, stop);

    /// <summary>The practice takes it out of the queue, e.g. because the student asked.</summary>
    public Task<Outcome<ReviewId>> AsWithdrawn(ReviewId id, Actor actor, CancellationToken stop = default) => End(id, actor, answered: false, stop);

    /// <summary>A plan of this lesson goes out: that is the answer. In the caller's transaction.</summary>
    internal async Task ByPlanOf(LessonId lesson, Actor actor, CancellationToken stop)
    {
        if (await db.RemoteReviews.FirstOrDefaultAsync(r => r.LessonId == lesson && r.Status == ReviewStatus.Opened, stop) is not { } review) return;
        review.Answer(door.Now);
        await money.Answered(review, actor, stop);
        door.Note(actor, "review-answered", review.Id);
        await letters.Ended(review, stop);
    }

    private async Task<Outcome<ReviewId>> End(ReviewId id, Actor actor, bool answered, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach) return NotAllowed.To("end remote reviews");
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        if (await db.RemoteReviews.Include(r => r.Clips).SingleOrDefaultAsync(r => r.Id == id, stop) is not { } review) return ReviewRefusals.NotFound;
        if (!review.IsOpen) return ReviewRefusals.Over;
        if (answered) review.Answer(door.Now);
        else review.Withdraw(door.Now);
        if (answered) await money.Answered(review, actor, stop);
        var clips = review.Clips.Select(c => c.Sha256).ToList();
        db.ReviewClips.RemoveRange(review.Clips);
        door.Note(actor, answered ? "review-answered" : "review-withdrawn", id);
        await letters.Ended(review, stop);
        if (await db.TrySave(stop) != Saved.Yes) return ReviewRefusals.Busy;
        await transaction.CommitAsync(stop);
        await files.DropUnneeded(clips, CancellationToken.None);
        return id;
    }
}
