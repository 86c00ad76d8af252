using MathNet.Numerics.Statistics;

namespace CoachOffice.Domain.Measuring;

/// <summary>
/// Swings whose value stands apart from the others of the lesson, by the median and 1.483 times the median absolute deviation (USP general chapter 1010).
/// They are shown, never dropped: a mark set on the wrong line and a swing that went wrong look alike from here.
/// </summary>
public static class SwingsApart
{
    /// <summary>Makes the median absolute deviation of normal values their standard deviation.</summary>
    private const double ToStandardDeviation = 1.483;

    /// <summary>So many robust standard deviations from the median is apart (Iglewicz and Hoaglin 1993 use 3.5; from memory).</summary>
    private const double Apart = 3.5;

    /// <summary>Of two values nobody can say which is the odd one.</summary>
    private const int FewestSwings = 3;

    /// <summary>Positions of the values that stand apart; none of fewer than three. Closer together than one swing scatters, nothing is apart.</summary>
    /// <param name="values">All swings' values, in the measure's unit.</param>
    /// <param name="measure">What was read.</param>
    public static IReadOnlyList<int> Of(IReadOnlyList<double> values, Measure measure)
    {
        ArgumentNullException.ThrowIfNull(values);
        ArgumentNullException.ThrowIfNull(measure);
        if (values.Count < FewestSwings) return [];
        var median = values.Median();
        var far = Apart * Math.Max(Spread(values), measure.SwingError);
        return [.. Enumerable.Range(0, values.Count).Where(i => Math.Abs(values[i] - median) > far)];
    }

    /// <summary>Robust standard deviation: 1.483 times the median absolute deviation; 0 where most values are equal.</summary>
    /// <param name="values">All swings' values, in one unit.</param>
    public static double Spread(IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        var median = values.Median();
        return ToStandardDeviation * values.Select(v => Math.Abs(v - median)).Median();
    }
}
