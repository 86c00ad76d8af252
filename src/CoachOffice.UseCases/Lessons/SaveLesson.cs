using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Lessons;

/// <summary>Saves a lesson's sheet: all of it or nothing, and once however often it arrives.</summary>
public sealed class SaveLesson(OfficeDb db, PlanDoor door, PlanBooks books, LessonInputs inputs, ArrivedSheets arrived)
{
    private const int LongestText = 20_000;

    /// <summary>The lesson's id, or everything that is wrong with the sheet, each with its field.</summary>
    public async Task<Outcome<LessonId>> As(LessonId lesson, int version, LessonForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach) return NotAllowed.To("record lessons");
        var kept = await db.Lessons.Include(l => l.AllReadings).SingleOrDefaultAsync(l => l.Id == lesson, stop);
        if (kept is null) return new Refusal("lesson-not-found", "There is no such lesson.");
        if (await arrived.Has(lesson, form, stop)) return lesson;
        await db.Entry(kept).Collection(l => l.Takes).LoadAsync(stop);
        var book = await books.InForce(stop);
        var (taken, refusals) = SheetReader.Taken(form, kept, book);
        if (kept.Version != version) return refusals.Count == 0 && Says(kept, form, taken) ? kept.Id : await Changed(kept.Id, stop);
        if (HeadingCheck.Of(form.Heading, await door.Today(stop)) is { } wrong) refusals.Add(wrong);
        if (form.Observations.Length > LongestText || form.Notes.Length > LongestText)
            refusals.Add(new Refusal("text-too-long", "Observations and notes hold up to 20,000 characters each.", nameof(form.Observations)));
        if (refusals.Count > 0) return Outcome<LessonId>.Refused(refusals);
        Write(kept, form, taken);
        await inputs.Keep(kept, book, stop);
        await arrived.Add(lesson, form, stop);
        door.Note(actor, "lesson-saved", AuditSubject.Of(kept.Id), $"readings:{taken.Count}");
        if (await db.TrySave(stop) == Saved.Yes) return kept.Id;
        db.ChangeTracker.Clear();
        var now = await db.Lessons.AsNoTracking().Include(l => l.AllReadings).SingleAsync(l => l.Id == lesson, stop);
        return Says(now, form, taken) ? lesson : await Changed(lesson, stop);
    }

    private void Write(Lesson kept, LessonForm form, List<TakenReading> taken)
    {
        kept.Head(form.Heading);
        kept.Write(form.Observations, form.Notes);
        if (form.Sheet is { } sheet) kept.ReadBy(sheet);
        kept.Record(taken, door.Ids, door.Now);
    }

    // The same sheet posted twice is one save: the second finds what it wanted to write.
    private static bool Says(Lesson kept, LessonForm form, List<TakenReading> taken) =>
        new LessonHeading(kept.HeldOn, kept.Club, kept.Kind) == form.Heading
        && kept.Observations == form.Observations.Trim() && kept.Notes == form.Notes.Trim()
        && kept.Readings.Count() == taken.Count && taken.TrueForAll(t => kept.Readings.Any(k => k.Says(t)));

    private async Task<Refusal> Changed(LessonId lesson, CancellationToken stop)
    {
        db.ChangeTracker.Clear();
        var last = await db.AuditEntries.Where(a => a.SubjectId == lesson.Value).OrderByDescending(a => a.At).ThenByDescending(a => a.Id).FirstOrDefaultAsync(stop);
        return new Refusal(Clash.Code, $"{last?.ActorName ?? "Someone else"} saved this lesson after you opened it. Your entries are still in the form and nothing was overwritten: open the lesson beside it, compare, then save again.");
    }
}
