using CoachOffice.Domain.Plans;

namespace CoachOffice.Domain.Measuring;

/// <summary>Grades a whole lesson: every reading, and every derived measure whose parts were read and which was not read itself.</summary>
public static class LessonGrading
{
    /// <summary>The findings, by row of the measure. Readings of measures the book does not know are the caller's defect and throw.</summary>
    public static IReadOnlyList<Finding> Grade(Rulebook book, LessonFacts facts)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(facts);
        var context = new GradingContext(book, facts);
        var byMeasure = facts.Readings.ToDictionary(r => r.Measure);
        var findings = new List<Finding>();
        foreach (var measure in book.Measures)
        {
            if (byMeasure.Remove(measure.Id, out var taken)) findings.Add(Grading.Grade(measure, taken, context));
            else if (Derive(book, measure, facts.Readings) is { } derived) findings.Add(Grading.Grade(measure, derived.Value, derived.Error, context));
        }

        return byMeasure.Count == 0 ? findings : throw new ArgumentException($"The rulebook has no measure '{byMeasure.First().Key.Value}'.", nameof(facts));
    }

    private static (MeasuredValue Value, ReadingError Error)? Derive(Rulebook book, Measure measure, IReadOnlyList<MeasuredValue> readings)
    {
        if (measure.Derived is not { } derivation || !AllRead(derivation, readings)) return null;
        var parts = derivation.Parts.Select(id => readings.FirstOrDefault(r => r.Measure == id)).OfType<MeasuredValue>().ToList();
        var values = parts.Select(p => InOwnUnit(book, p)).ToList();
        if (derivation.Kind == DerivationKind.Ratio && values[1] == 0) return null;
        var value = derivation.Kind == DerivationKind.Sum ? values.Sum() : values[0] / values[1];
        var taken = new MeasuredValue
        {
            Measure = measure.Id,
            Value = new Quantity(Math.Round(value, 9), measure.Unit),
            Readings = parts.Min(p => p.Readings),
            Instrument = parts.Any(p => p.Instrument == Instrument.Eye) ? Instrument.Eye : parts[0].Instrument,
            FrameRate = parts.Min(p => p.FrameRate),
        };
        return (taken, ErrorOf(book, measure, taken, parts));
    }

    private static bool AllRead(Derivation derivation, IReadOnlyList<MeasuredValue> readings)
    {
        foreach (var part in derivation.Parts) if (!readings.Any(r => r.Measure == part)) return false;
        return true;
    }

    /// <summary>A sum carries the errors of its parts. A ratio has an error of its own: its two parts come from the same swings and rise and fall together.</summary>
    private static ReadingError ErrorOf(Rulebook book, Measure measure, MeasuredValue taken, List<MeasuredValue> parts) =>
        measure.Derived!.Kind == DerivationKind.Sum
            ? ReadingError.OfSum(parts.Select(p => ReadingError.Of(book.Find(p.Measure)!, p)))
            : parts[1].Value.Unit.Dimension == Unit.Second.Dimension ? ReadingError.Of(measure, taken, parts[1].Value) : ReadingError.Of(measure, taken);

    private static double InOwnUnit(Rulebook book, MeasuredValue part) => part.Value.In(book.Find(part.Measure)!.Unit).Value;
}
