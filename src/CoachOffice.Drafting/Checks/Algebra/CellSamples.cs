using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;

namespace CoachOffice.Drafting.Checks.Algebra;

/// <summary>Readings at and between all values where something may change for a measure: plausible limits, the range's edges, the steps beyond them, and the bounds the patterns name.</summary>
internal sealed class CellSamples(Rulebook book, Club club, int age, Level level)
{
    /// <summary>So many swings that only the setup's own error is left.</summary>
    private const int ManySwings = 1000;

    private static readonly double[] Steps = [1, 2.5];

    /// <summary>The graded samples of a measure.</summary>
    public IReadOnlyList<Cell> Of(Measure measure, IReadOnlyList<Condition> conditions)
    {
        var taken = new MeasuredValue { Measure = measure.Id, Value = new Quantity(0, measure.Unit), Instrument = measure.Instruments[0] };
        var context = new GradingContext(book, PlainLesson.Of(book, club, age, [taken], level));
        var counts = Counts(conditions);
        return
        [
            .. from value in Values(measure, context.Hold(measure), conditions)
               from count in counts
               let reading = taken with { Value = new Quantity(value, measure.Unit), Readings = count }
               select new Cell(reading, Seen(Grading.Grade(measure, reading, context))),
        ];
    }

    /// <summary>As patterns see it: a side that is no fault is neither in nor out.</summary>
    private Finding Seen(Finding graded) => new Patterns.LessonContext(club, [graded]).Findings[0];

    private static List<int> Counts(IEnumerable<Condition> conditions) =>
        [.. conditions.OfType<ReadingsCondition>().SelectMany(c => new[] { c.AtLeast - 1, c.AtLeast }).Append(1).Append(ManySwings).Where(n => n >= 1).Distinct().Order()];

    private static IEnumerable<double> Values(Measure measure, HeldRange held, IReadOnlyList<Condition> conditions)
    {
        var range = held.Limits ?? new Limits(null, null);
        var around = new[] { range.Low, range.High }.OfType<double>().ToList();
        var (low, high) = Ends(measure, around, held.Step ?? 1);
        var cuts = Cuts(range, measure.SetupError, held.Step).Concat(conditions.OfType<ValueCondition>().Select(c => c.Bound)).Append(low).Append(high)
            .Select(v => Math.Round(v, 6)).Where(v => v >= low && v <= high).Distinct().Order().ToList();
        var between = cuts.Zip(cuts.Skip(1), Between);
        return cuts.Concat(between).Where(measure.Plausible.Contains).Distinct();
    }

    // Where the rulebook sets no limit, far enough out for any grade.
    private static (double Low, double High) Ends(Measure measure, List<double> around, double step) =>
        (measure.Plausible.Low ?? Math.Min(around.DefaultIfEmpty(0).Min(), measure.Plausible.High ?? 0) - (10 * step),
            measure.Plausible.High ?? Math.Max(around.DefaultIfEmpty(0).Max(), measure.Plausible.Low ?? 0) + (10 * step));

    private static IEnumerable<double> Cuts(Limits range, double setup, double? step)
    {
        var slight = Math.Min((step ?? 1) / 100, setup / 2);
        var beyond = Steps.Select(s => s * (step ?? 1)).Append(slight).Append(0).ToList();
        return beyond.Select(b => range.Low - b).Concat(beyond.Select(b => range.High + b)).OfType<double>();
    }

    /// <summary>A value strictly between, with as few digits as there is room for.</summary>
    private static double Between(double low, double high)
    {
        for (var digits = 0; digits < 6; digits++)
        {
            var middle = Math.Round((low + high) / 2, digits);
            if (middle > low && middle < high) return middle;
        }

        return (low + high) / 2;
    }
}
