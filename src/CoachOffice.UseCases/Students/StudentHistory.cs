using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students;

/// <summary>Gathers what is on record about a student.</summary>
public sealed class StudentHistory(OfficeDb db)
{
    // A page shows years of lessons, but not without end.
    private const int Most = 200;

    /// <summary>The newest rows of each kind.</summary>
    public async Task<HistoryFacts> Of(StudentId id, CancellationToken stop = default) => new()
    {
        Lessons = await db.Lessons.AsNoTracking().Where(l => l.StudentId == id).OrderByDescending(l => l.HeldOn).ThenByDescending(l => l.CreatedAt).Take(Most)
            .Select(l => new HeldLesson(l, l.AllReadings.Count(r => r.WithdrawnAt == null))).ToListAsync(stop),
        Plans = await db.Plans.AsNoTracking().Where(p => p.StudentId == id).OrderByDescending(p => p.CreatedAt).Take(Most)
            .Select(p => new HeldPlan(p.Id, p.LessonId, p.Status, p.CreatedAt, p.Stages.Count, p.Changes.ToList())).ToListAsync(stop),
        CheckIns = await db.CheckIns.AsNoTracking().Where(c => c.StudentId == id).OrderByDescending(c => c.At).Take(Most).ToListAsync(stop),
        Retests = await db.Retests.AsNoTracking().Where(r => r.StudentId == id).OrderByDescending(r => r.DueOn).Take(Most).ToListAsync(stop),
        Sent = await db.Messages.AsNoTracking().Where(m => m.StudentId == id && m.State == MessageState.Sent)
            .OrderByDescending(m => m.SentAt).Take(Most).ToListAsync(stop),
    };
}
