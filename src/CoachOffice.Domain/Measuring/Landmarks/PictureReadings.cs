namespace CoachOffice.Domain.Measuring.Landmarks;

/// <summary>Reads every measure that follows from the marks of a still.</summary>
public static class PictureReadings
{
    /// <summary>How far off a click is, as a standard error across and down, in pixels (own judgement).</summary>
    public const double ClickPixels = 3;

    /// <summary>A line whose ends lie nearer to each other gives no direction, in pixels.</summary>
    public const double ShortestLine = 20;

    private const double HalfStep = 0.5;

    /// <summary>All of the still's view and moment, in the order of the table.</summary>
    /// <param name="still">The still.</param>
    /// <param name="earlier">The still of an earlier moment of the same view, or null.</param>
    public static IReadOnlyList<PictureReading> Of(MarkedStill still, Func<Moment, MarkedStill?> earlier)
    {
        ArgumentNullException.ThrowIfNull(still);
        ArgumentNullException.ThrowIfNull(earlier);
        return [.. PictureMeasures.For(still.View, still.Moment).Select(m => Read(m, still, m.Against is { } moment ? earlier(moment) : still))];
    }

    private static PictureReading Read(PictureMeasure measure, MarkedStill still, MarkedStill? against)
    {
        var missing = Missing(still, measure.Needs).Concat(MissingThere(measure, against)).Distinct().ToList();
        if (missing.Count > 0 || against is null) return new PictureReading(measure, null, null, null, missing);
        var value = measure.Value(new StillSight(still), new StillSight(against));
        if (!double.IsFinite(value)) return new PictureReading(measure, null, null, null, [.. measure.Needs.Select(l => new MissingMark(still.Moment, l))]);
        return new PictureReading(measure, In(measure, value), In(measure, Click(measure, still, against)), In(measure, measure.Camera.Of(measure, still, against)), []);
    }

    private static IEnumerable<MissingMark> MissingThere(PictureMeasure measure, MarkedStill? against)
    {
        if (measure.Against is not { } moment) return [];
        return against is null ? [new MissingMark(moment, null)] : Missing(against, measure.NeedsThere);
    }

    private static IEnumerable<MissingMark> Missing(MarkedStill still, IReadOnlyList<Landmark> needs) =>
        needs.Where(l => still.Marks.At(l) is null || IsUseless(still.Marks, l)).Select(l => new MissingMark(still.Moment, l));

    private static bool IsUseless(StillMarks marks, Landmark landmark)
    {
        if (landmark == Landmark.LengthEnd && marks.KnownLengthCm is not > 0) return true;
        var start = landmark switch { Landmark.PlumbBottom => marks.At(Landmark.PlumbTop), Landmark.LengthEnd => marks.At(Landmark.LengthStart), _ => null };
        return start is { } from && marks.At(landmark) is { } to && (to - from).Length < ShortestLine;
    }

    // Each click errs by itself: the squares of what each does to the value add up. Marks of both stills, of plumb line and known length too.
    private static double Click(PictureMeasure measure, MarkedStill still, MarkedStill against)
    {
        double sum = 0;
        foreach (var step in (ReadOnlySpan<Pixel>)[new(HalfStep, 0), new(0, HalfStep)])
        {
            var back = new Pixel(-step.X, -step.Y);
            foreach (var mark in measure.Needs)
            {
                var (on, under) = (still.Moved(mark, step), still.Moved(mark, back));
                sum += Square(measure.Against is null ? Change(on, on, under, under) : Change(on, against, under, against));
            }

            foreach (var mark in measure.NeedsThere) sum += Square(Change(still, against.Moved(mark, step), still, against.Moved(mark, back)));
        }

        return ClickPixels * Math.Sqrt(sum);

        double Change(MarkedStill on, MarkedStill onThere, MarkedStill under, MarkedStill underThere) =>
            measure.Value(new StillSight(on), new StillSight(onThere)) - measure.Value(new StillSight(under), new StillSight(underThere));
    }

    private static double Square(double value) => value * value;

    private static Quantity In(PictureMeasure measure, double value) => new(value, measure.Unit);
}
