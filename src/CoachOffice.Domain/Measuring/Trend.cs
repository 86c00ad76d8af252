using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;
using NodaTime;

namespace CoachOffice.Domain.Measuring;

/// <summary>
/// Whether a series of values goes anywhere, in a way one bad day cannot turn: the slope is the median of the slopes of all pairs (Theil 1950, Sen 1968),
/// the test counts pairs that rise against pairs that fall (Mann 1945, Kendall 1975).
/// </summary>
public sealed record Trend
{
    /// <summary>Fewer days than this say nothing.</summary>
    public const int FewestDays = 5;

    /// <summary>Up to this many days without two equal values the chance is exact; beyond, the normal approximation with Kendall's correction for ties.</summary>
    private const int MostForExact = 40;

    private Trend()
    {
    }

    /// <summary>Days with a value; several values of one day count as their mean.</summary>
    public required int Days { get; init; }

    /// <summary>The values' unit a day.</summary>
    public required double SlopePerDay { get; init; }

    /// <summary>A day on the line and the value there: the median day and value.</summary>
    public required (double Day, double Value) Middle { get; init; }

    /// <summary>Pairs that rise less pairs that fall (Kendall's S).</summary>
    public required int Score { get; init; }

    /// <summary>Chance of a score at least as far from 0 if nothing moved, two-sided, 0 to 1.</summary>
    public required double Chance { get; init; }

    /// <summary>The trend; null below <see cref="FewestDays"/>.</summary>
    public static Trend? Of(IEnumerable<(LocalDate Day, double Value)> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        var days = values.GroupBy(v => v.Day).OrderBy(g => g.Key).Select(g => (Day: (double)DayNumber(g.Key), Value: g.Average(v => v.Value))).ToList();
        if (days.Count < FewestDays) return null;
        var pairs = days.SelectMany((from, i) => days.Skip(i + 1).Select(to => (Rise: to.Value - from.Value, Run: to.Day - from.Day))).ToList();
        var score = pairs.Sum(p => Math.Sign(p.Rise));
        return new Trend
        {
            Days = days.Count,
            SlopePerDay = pairs.Select(p => p.Rise / p.Run).Median(),
            Middle = (days.Select(d => d.Day).Median(), days.Select(d => d.Value).Median()),
            Score = score,
            Chance = ChanceOf(score, [.. days.GroupBy(d => d.Value).Select(g => g.Count())]),
        };
    }

    /// <summary>Days since 1970-01-01, the scale of <see cref="Middle"/>.</summary>
    public static int DayNumber(LocalDate day) => Period.DaysBetween(new LocalDate(1970, 1, 1), day);

    private static double ChanceOf(int score, IReadOnlyList<int> equal)
    {
        var n = equal.Sum();
        if (score == 0) return 1;
        return equal.Count == n && n <= MostForExact ? Exact(Math.Abs(score), n) : Approximate(Math.Abs(score), n, equal);
    }

    /// <summary>Of all orders of n different values, the share whose number of falling pairs is so small, doubled.</summary>
    private static double Exact(int score, int n)
    {
        double[] share = [1];
        for (var size = 2; size <= n; size++)
        {
            // Putting in the largest value adds 0 to size - 1 falling pairs, each as likely.
            var next = new double[share.Length + size - 1];
            for (var falls = 0; falls < share.Length; falls++)
                for (var more = 0; more < size; more++) next[falls + more] += share[falls] / size;
            share = next;
        }

        var most = ((n * (n - 1) / 2) - score) / 2;
        return Math.Min(1, 2 * share.Take(most + 1).Sum());
    }

    private static double Approximate(int score, int n, IReadOnlyList<int> equal)
    {
        static double Term(int count) => (double)count * (count - 1) * ((2 * count) + 5);
        var variance = (Term(n) - equal.Sum(Term)) / 18;
        return 2 * (1 - Normal.CDF(0, 1, (score - 1) / Math.Sqrt(variance)));
    }
}
