using CoachOffice.Data;
using CoachOffice.Domain.Lessons.Reviews;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Lessons.Reviews;

/// <summary>Remote reviews that wait for an answer, the earliest promise first.</summary>
public sealed class ReviewQueue(OfficeDb db, PracticeClock clock)
{
    /// <summary>Now, against which time left is told.</summary>
    public Instant Now => clock.Now;

    /// <summary>Those that wait.</summary>
    public async Task<IReadOnlyList<ReviewRow>> Waiting(int most, CancellationToken stop = default) =>
        await Rows(db.RemoteReviews.Where(r => r.Status == ReviewStatus.Received || r.Status == ReviewStatus.Opened).OrderBy(r => r.PromisedBy).ThenBy(r => r.Id).Take(most)).ToListAsync(stop);

    /// <summary>Those that ended last.</summary>
    public async Task<IReadOnlyList<ReviewRow>> Ended(int most, CancellationToken stop = default) =>
        await Rows(db.RemoteReviews.Where(r => r.Status == ReviewStatus.Answered || r.Status == ReviewStatus.Withdrawn).OrderByDescending(r => r.EndedAt).ThenBy(r => r.Id).Take(most)).ToListAsync(stop);

    private IQueryable<ReviewRow> Rows(IQueryable<RemoteReview> reviews) =>
        from review in reviews
        join student in db.Students on review.StudentId equals student.Id
        orderby review.PromisedBy, review.Id
        select new ReviewRow
        {
            Id = review.Id,
            StudentId = student.Id,
            StudentName = (student.GivenName + " " + student.FamilyName).Trim(),
            Club = review.Club,
            SubmittedAt = review.SubmittedAt,
            PromisedBy = review.PromisedBy,
            Status = review.Status,
            LessonId = review.LessonId,
            CoachId = review.CoachId,
            Clips = review.Clips.Count,
        };
}
