using MathNet.Numerics.Distributions;

namespace CoachOffice.Domain.Measuring;

/// <summary>Holds a measured value against the wanted range and says how far out it lies. All edges are inclusive; distances are compared after rounding to 1e-9.</summary>
public static class Grading
{
    /// <summary>Below this chance of lying outside, a value beyond the edge is only borderline.</summary>
    private const double SureEnough = 0.90;

    /// <summary>Up to this chance of lying outside, a value in range counts as a strength.</summary>
    private const double ClearlyInside = 0.25;

    private const double MildSteps = 1;
    private const double ModerateSteps = 2.5;

    /// <summary>Short of a goal of one's own by this many standard errors or less is no finding yet.</summary>
    private const double GoalErrors = 2;

    /// <summary>Grades one value.</summary>
    public static Finding Grade(Measure measure, MeasuredValue taken, GradingContext context) =>
        Grade(measure, taken, ReadingError.Of(measure, taken), context);

    /// <summary>Grades a value whose error is known from elsewhere, e.g. a derived one.</summary>
    public static Finding Grade(Measure measure, MeasuredValue taken, ReadingError error, GradingContext context)
    {
        ArgumentNullException.ThrowIfNull(measure);
        ArgumentNullException.ThrowIfNull(taken);
        ArgumentNullException.ThrowIfNull(error);
        ArgumentNullException.ThrowIfNull(context);
        var held = context.Hold(measure);
        var value = taken.Value.In(measure.Unit);
        var standardError = error.OfMean(taken.Readings).Value;
        var (side, outside) = held.Limits is null ? (Side.None, 0) : Beyond(held.Limits, value.Value);
        var chance = held.Limits is null ? 0 : ChanceOutside(held.Limits, value.Value, standardError);
        return new Finding
        {
            Measure = measure,
            Value = value,
            Readings = taken.Readings,
            StandardError = standardError,
            Range = held.Limits,
            Side = side,
            OutsideBy = outside,
            Step = held.Step,
            ChanceOutside = chance,
            IsDerived = context.IsDerived(measure.Id),
            Grade = GradeOf(held, outside, chance, standardError, context.CapsAtBorderline(measure, taken)),
        };
    }

    /// <summary>In range and clearly so: chance outside below a quarter.</summary>
    public static bool IsStrength(Finding finding) => finding is { Grade: Measuring.Grade.InRange, ChanceOutside: < ClearlyInside };

    private static Grade GradeOf(HeldRange held, double outside, double chance, double standardError, bool capped)
    {
        if (held.Limits is null) return Measuring.Grade.NoRange;
        if (outside <= 0) return Measuring.Grade.InRange;
        if (capped || chance < SureEnough) return Measuring.Grade.Borderline;
        if (held.FromGoal && outside <= GoalErrors * standardError) return Measuring.Grade.Borderline;
        var steps = Math.Round(outside / held.Step!.Value, 9);
        return steps <= MildSteps ? Measuring.Grade.Mild : steps <= ModerateSteps ? Measuring.Grade.Moderate : Measuring.Grade.Marked;
    }

    private static (Side Side, double By) Beyond(Limits limits, double value)
    {
        var below = limits.Low is { } low ? Math.Round(low - value, 9) : 0;
        var above = limits.High is { } high ? Math.Round(value - high, 9) : 0;
        return below > 0 ? (Side.Low, below) : above > 0 ? (Side.High, above) : (Side.None, 0);
    }

    private static double ChanceOutside(Limits limits, double value, double standardError)
    {
        if (standardError <= 0) return limits.Contains(value) ? 0 : 1;
        var below = limits.Low is { } low ? Normal.CDF(0, 1, (low - value) / standardError) : 0;
        var above = limits.High is { } high ? Normal.CDF(0, 1, (value - high) / standardError) : 0;
        return below + above;
    }
}
