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
        var stored = await db.StoredDrafts.AsNoTracking().SingleAsync(d => d.Id == found.DraftId, stop);
        if (stored.Json.Length == 0) return null;
        var lesson = await db.Lessons.AsNoTracking().SingleAsync(l => l.Id == found.LessonId, stop);
        var student = await db.Students.AsNoTracking().SingleAsync(s => s.Id == found.StudentId, stop);
        var (book, draft) = (await books.Of(found.DraftId, stop), DraftJson.Read(stored.Json));
        return new DraftView
        {
            Id = found.Id,
            Version = found.Version,
            Status = found.Status,
            StudentId = student.Id,
            StudentName = student.FullName,
            LessonId = lesson.Id,
            LessonOn = lesson.HeldOn,
            Club = lesson.Club,
            Draft = draft,
            Book = book,
            BookIsInForce = await db.BooksInForce.AnyAsync(b => b.Sha256 == stored.RulebookSha256, stop),
            Stages = StageViews.Of(found, book, draft),
            Edits = PlanEdits.InOrder(await db.PlanEdits.AsNoTracking().Where(e => e.PlanId == plan).ToListAsync(stop)),
            Message = found.Message,
            MadeAt = stored.MadeAt,
            Obstacles = found.Status == PlanStatus.Draft ? await check.Of(found, stop) : Array.Empty<Refusal>(),
        };
    }
}
