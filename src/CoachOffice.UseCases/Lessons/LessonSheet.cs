using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Lessons.Sheets;
using NodaTime;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Lessons;

/// <summary>Lays the book's measures out as a sheet: by camera view, then moment, each with what was typed and what was read last time.</summary>
internal sealed class LessonSheet(Book book, GradingContext context, UnitSystem units, IReadOnlyList<EarlierReading> earlier)
{
    /// <summary>The last lesson that read a measure, with its mean there; looked up for every row of the sheet.</summary>
    private readonly Dictionary<MeasureId, (LocalDate HeldOn, double Mean)> _last = LastOf(earlier);

    /// <summary>The groups in the order of views and moments.</summary>
    public IReadOnlyList<SheetGroup> Groups(IReadOnlyList<Reading> readings, ChosenSheet chosen) =>
        [.. book.Measures.Where(chosen.Shows).GroupBy(m => (m.View, m.Moment)).OrderBy(g => g.Key.View).ThenBy(g => g.Key.Moment)
            .Select(g => new SheetGroup(g.Key.View, g.Key.Moment, [.. g.OrderBy(m => m.Row).Select(m => Field(m, readings))]))];

    /// <summary>One measure's field.</summary>
    public SheetField Field(Measure measure, IReadOnlyList<Reading> readings)
    {
        var unit = ShownUnits.For(measure.Unit, units);
        var own = readings.Where(r => r.Measure == measure.Id).ToList();
        var known = _last.TryGetValue(measure.Id, out var last);
        return new SheetField
        {
            Measure = measure,
            Unit = unit,
            Text = ShownUnits.Text(own, measure.Unit, unit),
            Instrument = own is [var first, ..] ? first.Instrument : ReadingEntry.UsualOf(measure),
            FrameRate = own is [var one, ..] ? one.FrameRate : null,
            TakesAsRead = ReadingEntry.TakesAsRead(measure),
            Held = context.Hold(measure),
            NeedsHeight = context.NeedsHeight(measure),
            LastTime = known ? new Quantity(last.Mean, measure.Unit).In(unit).Value : null,
            LastOn = known ? last.HeldOn : null,
        };
    }

    private static Dictionary<MeasureId, (LocalDate HeldOn, double Mean)> LastOf(IReadOnlyList<EarlierReading> earlier) =>
        earlier.GroupBy(r => r.Measure).ToDictionary(g => g.Key, g => Newest([.. g]));

    private static (LocalDate HeldOn, double Mean) Newest(IReadOnlyList<EarlierReading> ofMeasure)
    {
        var newest = ofMeasure.MaxBy(r => (r.HeldOn, r.CreatedAt))!;
        return (newest.HeldOn, ofMeasure.Where(r => r.Lesson == newest.Lesson).Average(r => r.Value));
    }
}
