using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Plans;

/// <summary>Shows a draft beside what the coach made of it.</summary>
public sealed class DraftPage(OfficeDb db, PlanBooks books, ApprovalCheck check)
{
    /// <summary>The draft, or null when there is no such plan or its student was erased.</summary>
    public async Task<DraftView?> Of(PlanId plan, CancellationToken stop = default)
    {
        var found = await db.Plans.AsNoTracking().Include(p => p.Stages).SingleOrDefaultAsync(p => p.Id == plan, stop);
        if (found is null) return null;
        var around = await (
            from stored in db.StoredDrafts.AsNoTracking()
            from lesson in db.Lessons
            from person in db.Students
            where stored.Id == found.DraftId && lesson.Id == found.LessonId && person.Id == found.StudentId
            select new { stored.Json, stored.MadeAt, stored.RulebookSha256, lesson.HeldOn, lesson.Club, Student = person, IsInForce = db.BooksInForce.Any(b => b.Sha256 == stored.RulebookSha256) }).SingleAsync(stop);
        if (around.Json.Length == 0) return null;
        var (student, book, draft) = (around.Student, await books.Named(around.RulebookSha256, stop), DraftJson.Read(around.Json));
        return new DraftView
        {
            Id = found.Id,
            Version = found.Version,
            Status = found.Status,
            StudentId = student.Id,
            StudentName = student.FullName,
            LessonId = found.LessonId,
            LessonOn = around.HeldOn,
            Club = around.Club,
            Draft = draft,
            Book = book,
            BookIsInForce = around.IsInForce,
            Stages = StageViews.Of(found, book, draft),
            Edits = PlanEdits.InOrder(await db.PlanEdits.AsNoTracking().Where(e => e.PlanId == plan).ToListAsync(stop)),
            Message = found.Message,
            MadeAt = around.MadeAt,
            Obstacles = found.Status == PlanStatus.Draft ? await check.Of(found, student, stop) : Array.Empty<Refusal>(),
        };
    }
}
