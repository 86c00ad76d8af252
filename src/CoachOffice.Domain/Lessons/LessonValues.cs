using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Lessons;

/// <summary>From single readings to one measured value per measure.</summary>
public static class LessonValues
{
    /// <summary>The mean of different swings per measure, ordered by measure id; the coarsest instrument and the lowest frame rate of its readings.</summary>
    public static IReadOnlyList<MeasuredValue> Of(IEnumerable<Reading> readings, Func<MeasureId, Unit> unitOf) =>
        [.. readings.GroupBy(r => r.Measure).OrderBy(g => g.Key.Value, StringComparer.Ordinal).Select(g => new MeasuredValue
        {
            Measure = g.Key,
            Value = new Quantity(g.OrderBy(r => r.Swing).Average(r => r.Value), unitOf(g.Key)),
            Readings = g.Select(r => r.Swing).Distinct().Count(),
            Instrument = g.Max(r => r.Instrument),
            FrameRate = g.Min(r => r.FrameRate),
        })];
}
