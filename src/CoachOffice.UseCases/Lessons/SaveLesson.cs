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

/// <summary>Saves a lesson's sheet: all of it or nothing.</summary>
public sealed class SaveLesson(OfficeDb db, AuditTrail trail, PlanDoor door, PlanBooks books, LessonInputs inputs)
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
        await db.Entry(kept).Collection(l => l.Takes).LoadAsync(stop);
        var book = await books.InForce(stop);
        var (taken, refusals) = Taken(form, kept, book);
        if (kept.Version != version) return refusals.Count == 0 && Says(kept, form, taken) ? kept.Id : await Changed(kept.Id, stop);
        if (HeadingCheck.Of(form.Heading, await door.Today(stop)) is { } wrong) refusals.Add(wrong);
        if (form.Observations.Length > LongestText || form.Notes.Length > LongestText)
            refusals.Add(new Refusal("text-too-long", "Observations and notes hold up to 20,000 characters each.", nameof(form.Observations)));
        if (refusals.Count > 0) return Outcome<LessonId>.Refused(refusals);
        kept.Head(form.Heading);
        kept.Write(form.Observations, form.Notes);
        kept.Record(taken, door.Ids, door.Now);
        await inputs.Keep(kept, book, stop);
        trail.Add(actor, "lesson-saved", AuditSubject.Of(kept.Id), $"readings:{taken.Count}");
        if (await db.TrySave(stop) == Saved.Yes) return kept.Id;
        db.ChangeTracker.Clear();
        var now = await db.Lessons.AsNoTracking().Include(l => l.AllReadings).SingleAsync(l => l.Id == lesson, stop);
        return Says(now, form, taken) ? lesson : await Changed(lesson, stop);
    }

    // The same sheet posted twice is one save: the second finds what it wanted to write.
    private static bool Says(Lesson kept, LessonForm form, List<TakenReading> taken) =>
        new LessonHeading(kept.HeldOn, kept.Club, kept.Kind) == form.Heading
        && kept.Observations == form.Observations.Trim() && kept.Notes == form.Notes.Trim()
        && kept.Readings.Count() == taken.Count && taken.TrueForAll(t => kept.Readings.Any(k => k.Says(t)));

    private static (List<TakenReading> Taken, List<Refusal> Refusals) Taken(LessonForm form, Lesson kept, Book book)
    {
        var refusals = form.Entries.GroupBy(e => e.Measure).Where(g => g.Count() > 1)
            .Select(g => new Refusal("measure-twice", $"'{g.Key}' stands on the sheet twice; put all its values into one field.", ReadingEntry.FieldOf(g.Key))).ToList();
        var taken = new List<TakenReading>();
        foreach (var entry in form.Entries)
        {
            if (Untouched(entry, kept, book) is { } same) taken.AddRange(same);
            else if (ReadingEntry.Take(entry, book) is { Succeeded: true } fresh) taken.AddRange(fresh.Value);
            else refusals.AddRange(ReadingEntry.Take(entry, book).Refusals);
        }

        return (taken, refusals);
    }

    // A field that still says what was shown keeps its readings: rounding for the eye never changes a stored number.
    private static List<TakenReading>? Untouched(MeasureEntry entry, Lesson kept, Book book)
    {
        var readings = kept.Readings.Where(r => r.Measure.Value == entry.Measure).OrderBy(r => r.Swing).ToList();
        if (readings.Count == 0 || entry.AsRead || book.Find(readings[0].Measure) is not { } measure) return null;
        var unit = Unit.Find(entry.Unit) ?? measure.Unit;
        if (unit.Dimension != measure.Unit.Dimension || entry.Text.Trim() != ShownUnits.Text(readings, measure.Unit, unit)) return null;
        var rate = readings[0].FrameRate is { } fps ? ShownUnits.Number(fps) : "";
        if (rate != entry.FrameRate.Trim() || (entry.Instrument ?? ReadingEntry.UsualOf(measure)) != readings[0].Instrument) return null;
        return [.. readings.Select(r => new TakenReading { Measure = r.Measure, Value = new Quantity(r.Value, measure.Unit), Swing = r.Swing, View = measure.View, Instrument = r.Instrument, FrameRate = r.FrameRate })];
    }

    private async Task<Refusal> Changed(LessonId lesson, CancellationToken stop)
    {
        db.ChangeTracker.Clear();
        var last = await db.AuditEntries.Where(a => a.SubjectId == lesson.Value).OrderByDescending(a => a.At).ThenByDescending(a => a.Id).FirstOrDefaultAsync(stop);
        return new Refusal(Clash.Code, $"{last?.ActorName ?? "Someone else"} saved this lesson after you opened it. Your entries are still in the form and nothing was overwritten: open the lesson beside it, compare, then save again.");
    }
}
