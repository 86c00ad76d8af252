using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Media;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Media;

/// <summary>Writes values of a still into the sheet of its lesson, as readings from video of the swing it shows.</summary>
public sealed class PutIntoSheet(OfficeDb db, StillPage page, PlanBooks books, LessonInputs inputs, MediaDoor door)
{
    /// <summary>How many were written, or why none. A reading of the same measure and swing gives way to the new one; all others stay.</summary>
    /// <param name="order">Which values, and what they were seen on.</param>
    /// <param name="actor">Who does it.</param>
    /// <param name="stop">Ends the wait.</param>
    public async Task<Outcome<int>> From(PutOrder order, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(order);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach) return NotAllowed.To("record lessons");
        if (await page.Of(order.Lesson, order.Still, stop) is not { } view) return MediaRefusals.NotFound;
        if (MediaRefusals.Of(view.Permission, view.Student) is { } against) return against;
        var lesson = await db.Lessons.Include(l => l.AllReadings).SingleAsync(l => l.Id == order.Lesson, stop);
        await db.Entry(lesson).Collection(l => l.Takes).LoadAsync(stop);
        if (view.Still.Version != order.StillVersion || lesson.Version != order.LessonVersion) return Changed;
        var fresh = view.Values.Where(v => v.CanBePut && order.Measures.Contains(v.Measure.Id.Value)).Select(v => Taken(v, view)).ToList();
        if (fresh.Count == 0) return new Refusal("still-nothing-to-put", "Tick at least one value that is computed and can be; mark what is missing first.");
        var book = await books.InForce(stop);
        lesson.Record([.. lesson.Readings.Where(r => !fresh.Exists(f => f.Measure == r.Measure && f.Swing == r.Swing)).Select(r => Standing(r, book)), .. fresh], door.Ids, door.Now);
        await inputs.Keep(lesson, book, stop);
        door.Note(actor, "readings-from-still", AuditSubject.Of(lesson.Id), $"still:{order.Still.Value} readings:{fresh.Count}");
        return await db.TrySave(stop) == Saved.Yes ? fresh.Count : Changed;
    }

    private static Refusal Changed { get; } = new(Clash.Code, "Somebody saved the lesson or this still after you opened it. Nothing was written: look at the values again, then put them into the sheet.");

    private static TakenReading Taken(StillValue value, StillView view) => new()
    {
        Measure = value.Measure.Id,
        Value = value.Rounded!.Value,
        Swing = view.Shows.Swing,
        View = view.Shows.View,
        Instrument = Instrument.Video,
        FrameRate = view.FrameRate,
    };

    // A measure that has left the rulebook keeps its readings too; their unit is of no matter, for they are not written anew.
    private static TakenReading Standing(Reading reading, Book book) => new()
    {
        Measure = reading.Measure,
        Value = new Quantity(reading.Value, book.Find(reading.Measure)?.Unit ?? Unit.Ratio),
        Swing = reading.Swing,
        Instrument = reading.Instrument,
        FrameRate = reading.FrameRate,
    };
}
