using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;

namespace CoachOffice.Domain.Measuring;

/// <summary>How two ways of reading the same thing agree: bias and 95 % limits of agreement (Bland and Altman 1986), in the unit of the readings.</summary>
public sealed record Agreement
{
    private Agreement()
    {
    }

    /// <summary>Number of pairs.</summary>
    public required int Pairs { get; init; }

    /// <summary>Mean difference, first way minus second.</summary>
    public required double Bias { get; init; }

    /// <summary>Standard deviation of the differences (n - 1).</summary>
    public required double Spread { get; init; }

    /// <summary>Standard error of the bias.</summary>
    public double BiasError => Spread / Math.Sqrt(Pairs);

    /// <summary>95 % confidence interval of the bias, by Student's t.</summary>
    public Limits BiasInterval => new(Bias - (T * BiasError), Bias + (T * BiasError));

    /// <summary>Limits of agreement: bias plus and minus 1.96 standard deviations.</summary>
    public Limits OfNineteenInTwenty => new(Bias - (1.96 * Spread), Bias + (1.96 * Spread));

    /// <summary>Standard error of one limit: the root of 3 s^2 / n.</summary>
    public double LimitError => Math.Sqrt(3 * Spread * Spread / Pairs);

    private double T => StudentT.InvCDF(0, 1, Pairs - 1, 0.975);

    /// <summary>Of at least two pairs in one unit; throws otherwise.</summary>
    public static Agreement Of(IReadOnlyList<Quantity> first, IReadOnlyList<Quantity> second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        if (first.Count != second.Count || first.Count < 2) throw new ArgumentException("Agreement needs at least two pairs.", nameof(second));
        var differences = first.Zip(second, (a, b) => a.Value - b.In(a.Unit).Value).ToList();
        return new Agreement { Pairs = differences.Count, Bias = differences.Mean(), Spread = differences.StandardDeviation() };
    }
}
