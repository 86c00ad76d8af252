using System.Globalization;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.SeedDemo.Swings;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Lessons.Sheets;
using CoachOffice.UseCases.Measuring.Again;
using NodaTime;

namespace CoachOffice.SeedDemo.Year;

/// <summary>Quiet hours in which a take of somebody's lesson is read again, now by the same coach, now by another; the last ones still wait.</summary>
internal sealed class ReadingHour(Scene scene)
{
    // One lesson in so many.
    private const int Every = 4;

    // A mark goes astray by so much of what a swing scatters.
    private const double Marking = 0.45;

    private const int StillWaiting = 10;

    /// <summary>Reads a take of the lesson again, when it is one of those. Its chance is its own, so that the year stays as it is without it.</summary>
    public async Task Pass(StudentLife life, LessonId lesson, LocalDate day, CancellationToken stop)
    {
        if ((day.DayOfYear + life.Seat) % Every != 0) return;
        var view = await scene.Office.Do((LessonPage page) => page.Of(lesson, new SheetWish(life.Coach), stop));
        if (view?.Takes.FirstOrDefault(t => t is { Swing: 1, View: View.FaceOn }) is not { } take) return;
        var id = await scene.Office.Must((AskSecondReading ask) => ask.Of(lesson, take.Id, life.Coach, stop));
        if (scene.Calendar.Before(day) < StillWaiting) return;
        var chance = new Chance((life.Seat * 1000) + day.DayOfYear);
        var first = (await scene.Office.Do((TakePage page) => page.Of(lesson, take.Id, stop)))!.Readings;
        var entries = first.Select(r => new MeasureEntry
        {
            Measure = r.Measure.Id.Value,
            Text = Clamped(r.Value.Value + chance.Around(Marking * r.Measure.SwingError), r.Measure).ToString("0.0#", CultureInfo.InvariantCulture),
            Unit = r.Measure.Unit.Symbol,
        }).ToList();
        var reader = day.DayOfYear % 3 == 0 ? life.Coach : life.Coach == scene.Cast.First ? scene.Cast.Second : scene.Cast.First;
        await scene.Office.Must((RecordSecondReading record) => record.As(id, 1, entries, reader, stop));
    }

    private static double Clamped(double value, Measure measure) => Math.Clamp(value, measure.Plausible.Low ?? value, measure.Plausible.High ?? value);
}
