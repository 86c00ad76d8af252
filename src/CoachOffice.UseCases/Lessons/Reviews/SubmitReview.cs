using CoachOffice.Data;
using CoachOffice.Data.Media;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons.Reviews;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Lessons.Reviews;

/// <summary>Takes a remote review in: clips, words, the promise and its acknowledgement in one transaction.</summary>
public sealed class SubmitReview(OfficeDb db, MediaFolder folder, ReviewCheck check, ReviewDoor door, ReviewLetters letters)
{
    /// <summary>The review's id, or why not. The same form sent twice is one review.</summary>
    public async Task<Outcome<ReviewId>> From(ReviewForm form, VisitPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(pass);
        if (await db.RemoteReviews.AnyAsync(r => r.Id == form.Id && r.StudentId == pass.StudentId, stop)) return form.Id;
        var before = await check.Of(form, pass.StudentId, 0, stop);
        if (!before.Succeeded) return Outcome<ReviewId>.Refused(before.Refusals);
        var received = await check.Receive(form.Clips, stop);
        if (!received.TryGet(out var clips)) return Outcome<ReviewId>.Refused(received.Refusals);
        try
        {
            return await Keep(form, pass, clips, stop);
        }
        finally
        {
            foreach (var clip in clips) clip.Content.Dispose();
        }
    }

    private async Task<Outcome<ReviewId>> Keep(ReviewForm form, VisitPass pass, IReadOnlyList<ReceivedClip> clips, CancellationToken stop)
    {
        using var alone = await folder.Alone(stop);
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var asked = await check.Of(form, pass.StudentId, clips.Sum(c => c.Content.Bytes), stop);
        if (!asked.TryGet(out var offering)) return Outcome<ReviewId>.Refused(asked.Refusals);
        var review = RemoteReview.Submit(form.Id, pass.StudentId, offering, form.Words, new ReviewMoment(door.Now, await ZoneOf(form, stop)));
        foreach (var clip in clips) review.Add(door.NewId(), folder.Keep(clip.Content, clip.Format), door.Now);
        db.RemoteReviews.Add(review);
        await letters.Received(review, stop);
        door.Note(Actor.Student, "review-received", review.Id);
        if (await db.TrySave(stop) == Saved.WasThere) return form.Id;
        await transaction.CommitAsync(stop);
        return review.Id;
    }

    private async Task<string> ZoneOf(ReviewForm form, CancellationToken stop) =>
        DateTimeZoneProviders.Tzdb.GetZoneOrNull(form.Zone) is { } zone ? zone.Id : (await door.Zone(stop)).Id;
}
