using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Plans;

/// <summary>Shows a draft beside what the coach made of it.</summary>
public sealed class DraftPage(OfficeDb db, PlanBooks books, ApprovalCheck check, KeptDrafts kept)
{
    private static readonly CompiledQuery<PlanId, Plan> ById = new((db, plan) => db.Plans.AsNoTracking().Include(p => p.Stages).Where(p => p.Id == plan));

    private static readonly CompiledQuery<PlanId, PlanEdit> EditsOf = new((db, plan) => db.PlanEdits.AsNoTracking().Where(e => e.PlanId == plan));

    private static readonly CompiledQuery<PlanId, DraftSurroundings> AroundOf = new((db, plan) =>
        from own in db.Plans.AsNoTracking()
        join stored in db.StoredDrafts on own.DraftId equals stored.Id
        join lesson in db.Lessons on own.LessonId equals lesson.Id
        join person in db.Students on own.StudentId equals person.Id
        where own.Id == plan
        select new DraftSurroundings(stored.MadeAt, stored.RulebookSha256, lesson.HeldOn, lesson.Club, person, db.BooksInForce.Any(b => b.Sha256 == stored.RulebookSha256)));

    /// <summary>The draft, or null when there is no such plan or its student was erased.</summary>
    public async Task<DraftView?> Of(PlanId plan, CancellationToken stop = default)
    {
        if (await ById.Rows(db, plan, stop) is not [var found] || await AroundOf.Rows(db, plan, stop) is not [{ Student: { ErasedAt: null } student } around]) return null;
        if (await Stored(found.DraftId, stop) is not { } draft) return null;
        var book = await books.Named(around.Rulebook, stop);
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
            Edits = PlanEdits.InOrder(await EditsOf.Rows(db, plan, stop)),
            Message = found.Message,
            MadeAt = around.MadeAt,
            Obstacles = found.Status == PlanStatus.Draft ? await check.Of(found, student, stop) : Array.Empty<Refusal>(),
        };
    }

    /// <summary>Null when the draft was emptied.</summary>
    private async Task<Draft?> Stored(DraftId id, CancellationToken stop)
    {
        if (kept.Find(id) is { } known) return known;
        var json = await db.StoredDrafts.Where(d => d.Id == id).Select(d => d.Json).SingleAsync(stop);
        return json.Length == 0 ? null : kept.Keep(id, DraftJson.Read(json));
    }
}
