using CoachOffice.Data;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.FollowUps;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Plans;

/// <summary>Shows a plan's life.</summary>
public sealed class PlanPage(OfficeDb db, PlanBooks books)
{
    /// <summary>The plan, or null when there is none.</summary>
    public async Task<PlanView?> Of(PlanId plan, CancellationToken stop = default)
    {
        var found = await db.Plans.AsNoTracking().Include(p => p.Stages).Include(p => p.Changes).SingleOrDefaultAsync(p => p.Id == plan, stop);
        if (found is null) return null;
        var around = await Around(found, stop);
        var book = await books.Named(around.Rulebook, stop);
        return new PlanView
        {
            Id = found.Id,
            Version = found.Version,
            Status = found.Status,
            StudentId = found.StudentId,
            StudentName = around.Name,
            LessonId = found.LessonId,
            LessonOn = around.HeldOn,
            HoldReason = found.HoldReason,
            RestartsOn = found.RestartsOn,
            Message = found.Message,
            IfThen = found.IfThen,
            ApprovedAt = found.ApprovedAt,
            ApprovedBy = found.ApprovedBy,
            Stages = StageViews.Of(found, book, null),
            Changes = [.. found.Changes.OrderBy(c => c.At).ThenBy(c => c.Id)],
            Edits = PlanEdits.InOrder(await db.PlanEdits.AsNoTracking().Where(e => e.PlanId == plan).ToListAsync(stop)),
            CheckIns = await db.CheckIns.AsNoTracking().Where(c => c.PlanId == plan).OrderByDescending(c => c.PracticedOn).ThenByDescending(c => c.At).ToListAsync(stop),
            Retests = await Retests(plan, book, stop),
            Messages = await Messages(plan, stop),
        };
    }

    private Task<Surroundings> Around(Plan plan, CancellationToken stop) =>
        (from draft in db.StoredDrafts.AsNoTracking()
         from lesson in db.Lessons
         from student in db.Students
         where draft.Id == plan.DraftId && lesson.Id == plan.LessonId && student.Id == plan.StudentId
         select new Surroundings(draft.RulebookSha256, lesson.HeldOn, (student.GivenName + " " + student.FamilyName).Trim())).SingleAsync(stop);

    private async Task<IReadOnlyList<PlanRetest>> Retests(PlanId plan, Book book, CancellationToken stop)
    {
        var looks = await db.Retests.AsNoTracking().Where(r => r.PlanId == plan).OrderBy(r => r.DueOn).ThenBy(r => r.Id).ToListAsync(stop);
        return [.. looks.Select(r => new PlanRetest(r.Id, FaultWords.Measure(book, FaultId.Parse(r.Fault)), r.IsSecondLook, r.DueOn, r.Status, r.Verdict))];
    }

    private async Task<IReadOnlyList<PlanMessage>> Messages(PlanId plan, CancellationToken stop)
    {
        var messages = await db.Messages.AsNoTracking().Where(m => m.PlanId == plan).OrderBy(m => m.DueAt).ThenBy(m => m.Id).ToListAsync(stop);
        return
        [
            .. messages.Select(m => new PlanMessage
            {
                Id = m.Id,
                Kind = m.Kind,
                State = m.State,
                DueAt = m.DueAt,
                SentAt = m.SentAt,
                Reason = m.Reason,
                Problem = m.LastProblem is { } code ? Problems.InWords(code) : null,
            }),
        ];
    }

    private sealed record Surroundings(string Rulebook, LocalDate HeldOn, string Name);
}
