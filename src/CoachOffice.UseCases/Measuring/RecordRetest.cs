using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Measuring;

/// <summary>Records a re-test, judges whether the number moved, and lets the plan go on accordingly.</summary>
public sealed class RecordRetest(OfficeDb db, PlanDoor door, RetestCheck check, Baselines baselines, AfterRetest after)
{
    /// <summary>The verdict, or what is wrong with the readings.</summary>
    public async Task<Outcome<KeptVerdict>> With(RetestForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (await db.Retests.Where(r => r.Id == form.RetestId).Select(r => new { r.PlanId }).SingleOrDefaultAsync(stop) is not { } of)
            return new Refusal("retest-not-found", "There is no such re-test.");
        KeptVerdict? verdict = null;
        var deed = new PlanDeed { Plan = of.PlanId, Actor = actor, Action = "retest-recorded", Doing = "record re-tests", Detail = $"retest:{form.RetestId:N}" };
        var outcome = await door.Change(
            deed,
            async plan =>
            {
                var judged = await Judge(plan, form, actor, stop);
                if (judged.TryGet(out var kept)) verdict = kept;
                return judged.Refusals;
            },
            stop);
        return outcome.Succeeded ? verdict! : Outcome<KeptVerdict>.Refused(outcome.Refusals);
    }

    private async Task<Outcome<KeptVerdict>> Judge(Plan plan, RetestForm form, Actor actor, CancellationToken stop)
    {
        var look = await db.Retests.SingleAsync(r => r.Id == form.RetestId, stop);
        if (await check.Of(plan, look, form, stop) is { } against) return against;
        var baseline = await baselines.Of(plan.DraftId, FaultId.Parse(look.Fault), stop);
        var taken = form.Entries.Select(e => ReadingEntry.Take(e, baseline.Book)).ToList();
        var wrong = taken.SelectMany(t => t.Refusals).ToList();
        if (wrong.Count > 0) return Outcome<KeptVerdict>.Refused(wrong);
        var lesson = Record(plan, form, [.. taken.SelectMany(t => t.Value)], baseline, actor);
        if (baseline.ValueIn(LessonValues.Of(lesson.Readings, id => baseline.Book.Find(id)!.Unit)) is not { } value)
            return new Refusal("retest-reading", $"Give at least one reading of {baseline.Measure.Name}.", ReadingEntry.FieldOf(baseline.Measure.Id.Value));
        db.Lessons.Add(lesson);
        look.Begin(lesson.Id);
        return await after.Judge(new JudgedRetest(plan, look, baseline, value, form.HeldOn, actor), stop);
    }

    private Lesson Record(Plan plan, RetestForm form, IReadOnlyList<TakenReading> taken, Baseline baseline, Actor actor)
    {
        var heading = new LessonHeading(form.HeldOn, baseline.Facts.Club, LessonKind.Retest);
        var lesson = Lesson.Start(LessonId.From(door.NewId()), plan.StudentId, actor.Account!.Value, heading, door.Now);
        lesson.Write(form.Observations, "");
        lesson.Record(taken, door.Ids, door.Now);
        return lesson;
    }
}
