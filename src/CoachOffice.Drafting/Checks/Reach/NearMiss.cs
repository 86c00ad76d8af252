using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Patterns;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.Drafting.Checks.Reach;

/// <summary>Asks of a worked case that does not fire whether it lies next to one that does.</summary>
internal sealed class NearMiss(Rulebook book, PatternCase one)
{
    private const int ManySwings = 20;

    // In steps of the measure, up to just over one: the threshold itself may lie a whole step off.
    private static readonly double[] Moves = [-1.05, -0.75, -0.5, -0.25, 0.25, 0.5, 0.75, 1.05];

    private readonly Pattern _pattern = book.Find(one.Pattern)!;

    /// <summary>One reading moved, repeated, added or left out would make it fire.</summary>
    public bool IsOne => Neighbours().Any(Fires);

    private IEnumerable<IReadOnlyList<MeasuredValue>> Neighbours() =>
        one.Readings.SelectMany(taken => Changed(taken).Select(other => (IReadOnlyList<MeasuredValue>)[.. one.Readings.Select(r => r == taken ? other : r)]))
            .Concat(one.Readings.Select(taken => (IReadOnlyList<MeasuredValue>)[.. one.Readings.Where(r => r != taken)]))
            .Concat(Unread().SelectMany(Added).Select(added => (IReadOnlyList<MeasuredValue>)[.. one.Readings, added]));

    private IEnumerable<MeasuredValue> Changed(MeasuredValue taken)
    {
        var measure = book.Find(taken.Measure)!;
        return Moves.Append(0).SelectMany(_ => new[] { taken.Readings, Math.Max(taken.Readings, ManySwings) }, (move, count) =>
            taken with { Value = new Quantity(Math.Round(taken.Value.Value + (move * (measure.Step ?? 0)), 9), measure.Unit), Readings = count });
    }

    /// <summary>Measures the pattern would still have to hear from.</summary>
    private IEnumerable<Measure> Unread() => Match(one.Readings).Missing.Select(id => book.Find(id)!);

    /// <summary>In range, and a step and a half out on either side.</summary>
    private IEnumerable<MeasuredValue> Added(Measure measure)
    {
        if (book.RangeOf(measure.Id, one.Club)?.Limits is not { } range) return [];
        var beyond = 1.5 * (measure.Step ?? 0);
        return new[] { range.Low ?? range.High, range.Low - beyond, range.High + beyond }.OfType<double>().Select(value => new MeasuredValue
        {
            Measure = measure.Id,
            Value = new Quantity(Math.Round(value, 9), measure.Unit),
            Readings = ManySwings,
            Instrument = measure.Instruments[0],
        });
    }

    private bool Fires(IReadOnlyList<MeasuredValue> readings) => PatternEvaluator.SpeaksOf(_pattern, one.Club) && Match(readings).Holds;

    private PatternMatch Match(IReadOnlyList<MeasuredValue> readings) => PatternEvaluator.Evaluate(book, _pattern, Lesson(readings));

    private LessonContext Lesson(IReadOnlyList<MeasuredValue> readings)
    {
        var facts = PlainLesson.Of(book, one.Club, PlainLesson.GrownUp, readings);
        return new LessonContext(one.Club, LessonGrading.Grade(book, facts with { Student = facts.Student with { ClubSpeedGoal = one.ClubSpeedGoal } }));
    }
}
