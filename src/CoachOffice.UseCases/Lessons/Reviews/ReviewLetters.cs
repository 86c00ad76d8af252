using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Lessons.Reviews;
using CoachOffice.UseCases.FollowUps;
using NodaTime;

namespace CoachOffice.UseCases.Lessons.Reviews;

/// <summary>Writes what is said about a remote review into the transaction of its cause: the acknowledgement at once, the coach's reminder a day before the promise, and a word to the student should the promise pass.</summary>
public sealed class ReviewLetters(OfficeMessages messages, ReadMessageRules rules)
{
    private static readonly Duration DayBefore = Duration.FromDays(1);

    /// <summary>It came in.</summary>
    public async Task Received(RemoteReview review, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(review);
        await messages.Write(Due(review, MessageKind.ReviewReceived, review.SubmittedAt, atOnce: true, "A remote review came in: its promise is told to the student."), stop);
        await messages.Write(Due(review, MessageKind.ReviewDue, Instant.Max(review.PromisedBy - DayBefore, review.SubmittedAt), atOnce: true, "A promised answer is due within a day: the coach is told."), stop);
        await messages.Write(await Late(review, stop), stop);
    }

    /// <summary>What is said once when the promise has passed and nothing went out.</summary>
    public async Task<DueMessage> Late(RemoteReview review, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(review);
        var late = review.PromisedBy + Duration.FromHours((await rules.Of(MessageKind.ReviewLate, stop)).Timing);
        return Due(review, MessageKind.ReviewLate, late, atOnce: false, "The promise of an answer passed and none went out: the student is told once.");
    }

    /// <summary>Nobody waits for an answer any more.</summary>
    public Task Ended(RemoteReview review, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(review);
        return messages.EndAbout((review.Id.Value, review.StudentId), [MessageKind.ReviewDue, MessageKind.ReviewLate], "answered", stop);
    }

    private static DueMessage Due(RemoteReview review, MessageKind kind, Instant at, bool atOnce, string reason) => new()
    {
        Kind = kind,
        StudentId = review.StudentId,
        SubjectId = review.Id.Value,
        DueAt = at,
        AtOnce = atOnce,
        Reason = reason,
        Occasion = "once",
    };
}
