using NodaTime;

namespace CoachOffice.Domain.Measuring;

/// <summary>Says whether a number really moved between two lessons, or was only read differently.</summary>
public static class Verdicts
{
    /// <summary>Two-sided 95 % of the normal distribution, as printed by Bland and Altman (1996) and Weir (2005): 1.96 times root 2 is their 2.77.</summary>
    private const double NinetyFivePercent = 1.96;

    /// <summary>
    /// Never on the day of the lesson: taught golfers looked worse right after and better two weeks later (Guadagnoli et al. 2002).
    /// </summary>
    public static bool MayJudge(LocalDate lesson, LocalDate retest) => retest > lesson;

    /// <summary>The smallest change that reading error alone would rarely make (95 %): 1.96 * sqrt(2 setup^2 + swing^2/n1 + swing^2/n2); each reading with its own instrument's error.</summary>
    public static Quantity SmallestRealChange(MeasuredValue before, MeasuredValue after, Measure measure)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        ArgumentNullException.ThrowIfNull(measure);
        var first = ReadingError.Of(measure, before).OfMean(before.Readings).Value;
        var second = ReadingError.Of(measure, after).OfMean(after.Readings).Value;
        return new Quantity(NinetyFivePercent * Math.Sqrt((first * first) + (second * second)), measure.Unit);
    }

    /// <summary>Judges a re-test against the range the first value was held to.</summary>
    public static Verdict Judge(MeasuredValue before, MeasuredValue after, Measure measure, Limits range)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        ArgumentNullException.ThrowIfNull(measure);
        ArgumentNullException.ThrowIfNull(range);
        var old = before.Value.In(measure.Unit).Value;
        var now = after.Value.In(measure.Unit).Value;
        var real = SmallestRealChange(before, after, measure);
        var distance = DistanceToEdge(range, old);
        var movement = MovementOf(range, old, now, real.Value, distance);
        return new Verdict
        {
            Movement = movement,
            Standing = range.Contains(now) ? Standing.InRange : Standing.NotYet,
            Change = new Quantity(Math.Round(now - old, 9), measure.Unit),
            SmallestRealChange = real,
            MoreReadings = movement == Movement.CannotTell ? ReadingsNeeded.ToJudge(before, after, measure, new Quantity(distance, measure.Unit)) : null,
        };
    }

    private static Movement MovementOf(Limits range, double old, double now, double real, double distance)
    {
        if (Math.Round(Math.Abs(now - old), 9) <= real) return real > distance ? Movement.CannotTell : Movement.NoChangeBeyondReadingError;
        if ((old < range.Low && now > range.High) || (old > range.High && now < range.Low)) return Movement.MovedThrough;
        return Badness(range, now) < Badness(range, old) ? Movement.MovedToward : Movement.MovedAway;
    }

    /// <summary>How far from being well inside: positive outside, negative inside.</summary>
    private static double Badness(Limits range, double value) =>
        Math.Max(range.Low - value ?? double.NegativeInfinity, value - range.High ?? double.NegativeInfinity);

    private static double DistanceToEdge(Limits range, double value) =>
        Math.Min(Math.Abs(range.Low - value ?? double.PositiveInfinity), Math.Abs(value - range.High ?? double.PositiveInfinity));
}
