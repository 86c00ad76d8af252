using CoachOffice.Domain;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Lessons;

/// <summary>Reads a posted sheet: readings, and everything that is wrong with it.</summary>
internal static class SheetReader
{
    public static (List<TakenReading> Taken, List<Refusal> Refusals) Taken(LessonForm form, Lesson kept, Book book)
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
}
