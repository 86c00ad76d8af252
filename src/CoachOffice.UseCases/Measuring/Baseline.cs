using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Measuring;

/// <summary>What a re-test is compared with: the value and range the plan was drafted on, by the plan's own book, whatever was edited since.</summary>
public sealed record Baseline
{
    public required Book Book { get; init; }

    public required LessonFacts Facts { get; init; }

    public required Measure Measure { get; init; }

    public required MeasuredValue Before { get; init; }

    /// <summary>The wanted band as it was, in the measure's unit.</summary>
    public required Limits Range { get; init; }

    /// <summary>The value of this measure among readings taken, derived from its parts where it was not read itself; null when it is neither.</summary>
    public MeasuredValue? ValueIn(IReadOnlyList<MeasuredValue> readings)
    {
        var read = readings.FirstOrDefault(r => r.Measure == Measure.Id);
        if (read is not null) return read;
        var derived = LessonGrading.Grade(Book, Facts with { Readings = readings }).FirstOrDefault(f => f.Measure.Id == Measure.Id);
        return derived is null ? null : new MeasuredValue { Measure = Measure.Id, Value = derived.Value, Readings = derived.Readings };
    }
}
