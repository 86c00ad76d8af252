using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Media;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Students;

/// <summary>Writes a person's name wherever people write words in the office.</summary>
internal static class PersonalTraces
{
    public static async Task Leave(OfficeDb db, PlanId id, Instant now)
    {
        var ids = new SeededIds(id.GetHashCode());
        var plan = await db.Plans.Include(p => p.Stages).Include(p => p.Changes).SingleAsync(p => p.Id == id);
        OnPlan(plan, ids, now);
        var lesson = await db.Lessons.SingleAsync(l => l.Id == plan.LessonId);
        lesson.Write("Zebulon turns well.", "Zebulon's father asks about clubs.");
        db.AddRange(
            EditOf(plan, ids, now),
            CheckInOf(plan, ids, now),
            Answered(Retest.Ask(ids.Next(), plan, plan.Stages[0], new LocalDate(2026, 3, 20), false), now),
            Message.Due(ids.Next(), NudgeOf(plan, now), now));
        db.Add(MailBounce.Of(ids.Next(), db.Messages.Local.First(), "zebulon@example.org", "5.1.1", now));
        db.Add(MediaConsent.Give(ids.Next(), plan.StudentId, "Zebulon's mother", new LocalDate(2026, 3, 1), lesson.CoachId, now));
        await PayBy(db, plan.StudentId, ids, now);
        var input = LessonInput.Of(lesson);
        input.Draft(lesson.Club, "{\"student\":\"Zebulon\"}");
        db.Add(input);
        var draft = await db.StoredDrafts.SingleAsync(d => d.Id == plan.DraftId);
        db.Entry(draft).State = EntityState.Detached;
        db.Add(draft with { Id = DraftId.From(ids.Next()), Json = "{\"said\":\"Zebulon\"}", InputJson = "{\"student\":\"Zebulon\"}" });
    }

    private static Retest Answered(Retest look, Instant now)
    {
        look.TakeAnswer("Zebulon: 12", new LocalDate(2026, 3, 20), now);
        return look;
    }

    private static async Task PayBy(OfficeDb db, StudentId id, SeededIds ids, Instant now)
    {
        var details = new PayerDetails { Name = "Zebulon's mother", Email = "zebulon-pays@example.org", PostalAddress = "1 Zebulon Lane\nTown" };
        var payer = Payer.Register(PayerId.From(ids.Next()), details, now);
        db.Add(payer);
        (await db.Students.SingleAsync(s => s.Id == id)).PaidBy(payer.Id);
    }

    private static void OnPlan(Plan plan, SeededIds ids, Instant now)
    {
        plan.Write("Well done, Zebulon.");
        plan.Promise("When school ends, Zebulon swings ten times.");
        var stage = plan.Stages[0];
        stage.Rewrite([stage.Drills[0] with { Cue = "Zebulon, quiet head.", Steps = ["Zebulon stands."], DoneWhen = "Zebulon does 8 of 10" }], stage.Gate with { Text = "Zebulon in range" });
        plan.Become(PlanStatus.OnHold, new PlanStep(ids.Next(), now, "Carl Coach", "Zebulon is on holiday"));
    }

    private static PlanEdit EditOf(Plan plan, SeededIds ids, Instant now) => new()
    {
        Id = ids.Next(),
        PlanId = plan.Id,
        What = "message",
        Original = "Hello Zebulon",
        Changed = "Dear Zebulon",
        Comment = "Zebulon prefers it",
        Reason = EditReason.Wording,
        At = now,
        By = "Carl Coach",
    };

    private static CheckIn CheckInOf(Plan plan, SeededIds ids, Instant now) => new()
    {
        Id = ids.Next(),
        PlanId = plan.Id,
        StudentId = plan.StudentId,
        At = now,
        PracticedOn = new LocalDate(2026, 3, 2),
        Minutes = 25,
        Pain = true,
        PainRegion = Region.LowerBack,
        Comment = "Zebulon's back aches",
    };

    private static DueMessage NudgeOf(Plan plan, Instant now) => new()
    {
        Kind = MessageKind.PracticeNudge,
        StudentId = plan.StudentId,
        PlanId = plan.Id,
        DueAt = now,
        Reason = "Zebulon has not practised",
        Occasion = "2026-03-05",
    };
}
