using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Lessons;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Plans;

/// <summary>Drafts a plan from a lesson by the book in force and stores both the draft, which never changes again, and the proposal, which is the coach's.</summary>
public sealed class DraftPlan(OfficeDb db, AuditTrail trail, PlanBooks books, LessonInputs inputs, PlanDoor door)
{
    /// <summary>The proposed plan's id, or why there is none.</summary>
    public async Task<Outcome<PlanId>> For(LessonId lesson, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach || actor.Account is null) return NotAllowed.To("draft plans");
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var found = await db.Lessons.Include(l => l.AllReadings).SingleOrDefaultAsync(l => l.Id == lesson, stop);
        if (found is null) return new Refusal("lesson-not-found", "There is no such lesson.");
        var student = await db.Students.SingleAsync(s => s.Id == found.StudentId, stop);
        var book = await books.Compiled(stop);
        if (Against(found, student, book.Book) is { } against) return against;
        var plan = await Propose(new Material(found, student, book), actor, stop);
        await ThrowAwayOlder(plan, actor, stop);
        trail.Add(actor, "plan-drafted", AuditSubject.Of(plan.Id), $"book:{book.Sha256[..12]}");
        await db.SaveChangesAsync(stop);
        await transaction.CommitAsync(stop);
        return plan.Id;
    }

    private static Refusal? Against(Lesson lesson, Student student, Domain.Plans.Rulebook book)
    {
        if (student.ArchivedAt is not null) return new("student-archived", $"{student.FullName} is archived; restore the record first.");
        if (!lesson.Readings.Any()) return new("no-readings", "This lesson has no reading yet; record at least one, then draft.");
        var unknown = lesson.Readings.FirstOrDefault(r => book.Find(r.Measure) is null);
        return unknown is null ? null : new("measure-not-known", $"The rulebook in force has no measure '{unknown.Measure.Value}' any more; take its readings off the sheet, then draft.");
    }

    private async Task<Plan> Propose(Material of, Actor actor, CancellationToken stop)
    {
        var (now, today) = (door.Now, await door.Today(stop));
        var facts = await inputs.Facts(of.Lesson, today, of.Book.Book, stop);
        var draft = Drafter.Draft(of.Book, facts);
        var stored = new StoredDraft
        {
            Id = DraftId.From(door.NewId()),
            LessonId = of.Lesson.Id,
            StudentId = of.Student.Id,
            Json = DraftJson.Text(draft),
            InputJson = LessonInputs.Text(facts),
            InputSha256 = draft.Input,
            RulebookSha256 = of.Book.Sha256,
            Engine = draft.Engine,
            MadeAt = now,
            MadeBy = actor.Account!.Value,
        };
        var plan = Plan.Propose(PlanId.From(door.NewId()), stored, DraftStages.Of(draft, of.Book.Book), door.Ids);
        db.StoredDrafts.Add(stored);
        db.Plans.Add(plan);
        await inputs.KeepDrafted(of.Lesson, facts, stop);
        return plan;
    }

    // Another draft from the same lesson takes the place of one nobody approved; that one stays readable.
    private async Task ThrowAwayOlder(Plan plan, Actor actor, CancellationToken stop)
    {
        foreach (var older in await db.Plans.Where(p => p.LessonId == plan.LessonId && p.Status == PlanStatus.Draft && p.Id != plan.Id).ToListAsync(stop))
            older.Become(PlanStatus.Revoked, door.Step(actor, "drafted-again"));
    }

    private sealed record Material(Lesson Lesson, Student Student, CompiledRulebook Book);
}
