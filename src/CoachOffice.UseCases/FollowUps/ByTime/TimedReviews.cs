using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Lessons.Reviews;
using CoachOffice.UseCases.Lessons.Reviews;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps.ByTime;

/// <summary>Words that an answer is late for reviews taken in while the practice sent none, or by an earlier edition of the program.</summary>
public sealed class TimedReviews(OfficeDb db, ReviewLetters letters) : ITimedMessages
{
    /// <inheritdoc/>
    public async Task<IReadOnlyList<DueMessage>> Due(CancellationToken stop)
    {
        var open = await db.RemoteReviews.AsNoTracking().Where(r => r.Status == ReviewStatus.Received || r.Status == ReviewStatus.Opened).ToListAsync(stop);
        var due = new List<DueMessage>();
        foreach (var review in open) due.Add(await letters.Late(review, stop));
        return due;
    }
}
