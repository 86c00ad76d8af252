using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students;

/// <summary>Gathers what is on record about a student.</summary>
public sealed class StudentHistory(OfficeDb db)
{
    // A page shows years of lessons, but not without end.
    private const int Most = 200;

    private static readonly CompiledQuery<StudentId, HeldLesson> Lessons = new((db, id) =>
        db.Lessons.Where(l => l.StudentId == id).OrderByDescending(l => l.HeldOn).ThenByDescending(l => l.CreatedAt).Take(Most)
            .Select(l => new HeldLesson(l.Id, l.HeldOn, l.CreatedAt, l.Kind, l.Club, l.AllReadings.Count(r => r.WithdrawnAt == null))));

    private static readonly CompiledQuery<StudentId, HeldPlan> Plans = new((db, id) =>
        db.Plans.AsNoTracking().Where(p => p.StudentId == id).OrderByDescending(p => p.CreatedAt).Take(Most)
            .Select(p => new HeldPlan(p.Id, p.LessonId, p.Status, p.CreatedAt, p.Stages.Count, p.Changes.ToList())));

    private static readonly CompiledQuery<StudentId, CheckIn> CheckIns = new((db, id) =>
        db.CheckIns.AsNoTracking().Where(c => c.StudentId == id).OrderByDescending(c => c.At).Take(Most));

    private static readonly CompiledQuery<StudentId, Retest> Retests = new((db, id) =>
        db.Retests.AsNoTracking().Where(r => r.StudentId == id).OrderByDescending(r => r.DueOn).Take(Most));

    private static readonly CompiledQuery<StudentId, SentMessage> Sent = new((db, id) =>
        db.Messages.Where(m => m.StudentId == id && m.State == MessageState.Sent).OrderByDescending(m => m.SentAt).Take(Most)
            .Select(m => new SentMessage(m.Id, m.Kind, m.SentAt ?? m.DueAt)));

    /// <summary>The newest rows of each kind.</summary>
    public async Task<HistoryFacts> Of(StudentId id, CancellationToken stop = default) => new()
    {
        Lessons = await Lessons.Rows(db, id, stop),
        Plans = await Plans.Rows(db, id, stop),
        CheckIns = await CheckIns.Rows(db, id, stop),
        Retests = await Retests.Rows(db, id, stop),
        Sent = await Sent.Rows(db, id, stop),
    };
}
